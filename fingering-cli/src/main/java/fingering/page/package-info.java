/**
 * HTML pages of plans, of practice and of a check: the staff with its marks, graphs and tables.
 * Each page is a single self-contained file.
 *
 * <p>Depends on the library, {@link fingering.check}, {@link fingering.page.staff} and {@link
 * fingering.svg}, but not on options. No method takes or returns null unless it says so.
 */
package fingering.page;
