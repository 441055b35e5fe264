package fingering.engraving.drawing;

import com.google.common.collect.ImmutableSet;
import fingering.engraving.ink.Kind;

/**
 * Something to circle on the music.
 *
 * @param time its time in quarter notes from the start of the part
 * @param kinds what may be circled there, the best first
 */
public record Circled(double time, ImmutableSet<Kind> kinds) {}
