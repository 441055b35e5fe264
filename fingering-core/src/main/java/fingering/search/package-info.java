/**
 * Exact search over the grips of a passage by dynamic programming. No method takes or returns null.
 */
package fingering.search;
