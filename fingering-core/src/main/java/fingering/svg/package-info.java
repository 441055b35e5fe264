/**
 * Pictures as SVG text: elements, numbers, and the width of text.
 *
 * <p>Depends on no other package. No method takes or returns null unless it says so.
 */
package fingering.svg;
