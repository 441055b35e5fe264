/**
 * What a plan must show, keep or avoid: each demand said by itself, in words and as a test of grips
 * or of whole paths.
 */
package fingering.demand;
