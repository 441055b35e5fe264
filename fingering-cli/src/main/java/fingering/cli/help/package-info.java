/** Help, manual pages and error messages. */
package fingering.cli.help;
