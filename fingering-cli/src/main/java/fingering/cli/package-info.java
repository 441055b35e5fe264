/**
 * The command line: commands, their options, and the rendering of plans as text and JSON.
 *
 * <p>It knows every room, and no room knows it. Only {@link fingering.cli.Main} prints, and ends
 * the program. No method takes or returns null unless it says so.
 */
package fingering.cli;
