/**
 * What a fingering costs and why: small named rules, the weights a teacher can read and change, and
 * the charges that explain a total. All costs are exact whole points. No method takes or returns
 * null; all values are immutable.
 */
package fingering.scoring;
