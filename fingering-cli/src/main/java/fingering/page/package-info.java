/**
 * The page that shows plans: the staff with their marks, graphs, tables; one file that stands
 * alone.
 */
package fingering.page;
