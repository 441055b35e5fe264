/**
 * What the templates of pages show: lines, tables and links, and the texts around them.
 *
 * <p>Depends on the library, {@link fingering.check} and {@link fingering.svg}. No method takes or
 * returns null unless it says so.
 */
package fingering.page.view;
