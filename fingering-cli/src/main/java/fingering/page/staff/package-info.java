/**
 * A staff with the marks of plans, drawn from plain shapes. It takes no engraver's place.
 *
 * <p>It knows {@link fingering.page.svg}, and of the library the music alone: marks are told to it
 * as text. No method takes or returns null unless it says so.
 */
package fingering.page.staff;
