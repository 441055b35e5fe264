package fingering.musicxml.element;

import fingering.music.NoteAddress;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where a note or a rest stands in its part, and how long it lasts.
 *
 * @param address where it stands in the file
 * @param onset quarter notes from the start of its measure
 * @param length in quarter notes; 0 for a grace note
 * @param grace whether it is a grace note
 * @param chord whether it begins with the note before it in the file
 * @param voice the voice as numbered in the file
 */
public record NoteTime(
    NoteAddress address,
    BigFraction onset,
    BigFraction length,
    boolean grace,
    boolean chord,
    String voice) {}
