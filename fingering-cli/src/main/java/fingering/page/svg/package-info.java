/** Pictures as SVG text: elements, numbers, and how wide letters are. */
package fingering.page.svg;
