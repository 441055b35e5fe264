/** The commands. */
package fingering.cli.command;
