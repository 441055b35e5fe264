package fingering.music;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A tempo and the time from which it applies.
 *
 * @param start time in quarter notes from the start of the part
 * @param tempo the new tempo
 */
public record TempoChange(BigFraction start, Tempo tempo) {}
