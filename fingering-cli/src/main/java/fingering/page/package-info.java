/**
 * The pages of plans, of practice and of a check: the staff with its marks, graphs, tables; one
 * file that stands alone.
 *
 * <p>It knows the library, {@link fingering.check}, {@link fingering.page.staff} and {@link
 * fingering.page.svg}; nothing of options. No method takes or returns null unless it says so.
 */
package fingering.page;
