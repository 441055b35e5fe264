/**
 * A staff with the marks of plans, drawn from plain shapes. It does not aim for the quality of
 * engraved music.
 *
 * <p>Depends on {@link fingering.svg} and, in the library, only on the music: it gets marks as
 * text. No method takes or returns null unless it says so.
 */
package fingering.page.staff;
