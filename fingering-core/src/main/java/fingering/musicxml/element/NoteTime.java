package fingering.musicxml.element;

import fingering.music.NoteAddress;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The position and length of a note or a rest.
 *
 * @param address the position in the file
 * @param onset quarter notes from the start of the measure
 * @param length quarter notes; 0 for a grace note
 * @param grace whether it is a grace note
 * @param chord whether it begins together with the previous note in the file
 * @param voice the voice as numbered in the file
 */
public record NoteTime(
    NoteAddress address,
    BigFraction onset,
    BigFraction length,
    boolean grace,
    boolean chord,
    String voice) {}
