/**
 * What is prepared for an audition: a set of pieces that together have to show some skills, planned
 * so that they do at the least cost. No public method takes or returns null; all values that are
 * handed out are immutable.
 */
package fingering.audition;
