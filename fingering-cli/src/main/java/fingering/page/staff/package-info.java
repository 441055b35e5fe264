/** A staff with the marks of plans, drawn from plain shapes. It takes no engraver's place. */
package fingering.page.staff;
