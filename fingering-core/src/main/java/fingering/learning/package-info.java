/**
 * Learns the weights of the rules from fingered scores: the weights under which what players
 * printed is likeliest. No method that is public takes or returns null.
 */
package fingering.learning;
