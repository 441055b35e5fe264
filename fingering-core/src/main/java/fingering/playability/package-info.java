/**
 * The arranger's check: what cannot, or should not, be asked of the string parts of a score for
 * players of a level. Times are seconds, or microseconds where so named. No method takes or returns
 * null; all values are immutable, and only a {@link fingering.playability.Checker} keeps anything.
 */
package fingering.playability;
