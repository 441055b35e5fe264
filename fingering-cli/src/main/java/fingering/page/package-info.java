/**
 * HTML pages of plans, of practice and of a check: the music with its fingers, graphs and tables.
 * Each page is a single self-contained file.
 *
 * <p>Depends on the library, {@link fingering.check}, {@link fingering.page.view}, {@link
 * fingering.page.music} and the classes that the build makes from the templates, but not on
 * options. No method takes or returns null unless it says so.
 */
package fingering.page;
