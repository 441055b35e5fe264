/**
 * Checks many scores at once and reports the findings as data: grouped findings, JSON, and SARIF,
 * the format that editors and build servers read.
 *
 * <p>Depends on {@link fingering.playability} and the packages below it, but not on options or
 * pages. No method takes or returns null unless it says so. Several threads check files with one
 * shared checker; reports receive the results in order, on one thread.
 */
package fingering.check;
