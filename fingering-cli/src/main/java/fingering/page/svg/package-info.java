/**
 * Pictures as SVG text: elements, numbers, and how wide letters are.
 *
 * <p>It knows no other room. No method takes or returns null unless it says so.
 */
package fingering.page.svg;
