/**
 * What a fingering costs and why: small named rules, the weights a teacher can read and change, and
 * the charges that explain a total; and what a player has learned, since the rest is dear. All
 * costs are exact whole points. No method takes or returns null; all values are immutable.
 */
package fingering.scoring;
