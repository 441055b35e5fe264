/** Files that the user names: reads the small ones, and writes new ones safely. */
package fingering.cli.file;
