/**
 * The command line: commands, and the rendering of plans as text and JSON. No method takes or
 * returns null.
 */
package fingering.cli;
