/**
 * What to do with a plan until the day it is played: the tempo ladder, the journal that tells what
 * was clean, practice spots with their exercises, what to circle in the part. Nothing here asks for
 * the date by itself. No method takes or returns null; all values are immutable.
 */
package fingering.practice;
