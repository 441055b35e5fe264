/** Plans, comparisons and checks as text. */
package fingering.cli.text;
