/** Options that commands share, and what they stand for once they are read. */
package fingering.cli.option;
