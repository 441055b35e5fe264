package fingering.music;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A tempo, and from where on it holds.
 *
 * @param start quarter notes from the start of the part
 * @param tempo the tempo from there on
 */
public record TempoChange(BigFraction start, Tempo tempo) {}
