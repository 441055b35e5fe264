/** Plans and comparisons as JSON. */
package fingering.cli.json;
