package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;

/**
 * Chords and rests under one number.
 *
 * @param number the number, 3 for a triplet
 * @param chords the chords in order of time
 * @param beamed whether one beam joins exactly these, so that no bracket is needed
 */
public record Tuplet(int number, ImmutableList<Chord> chords, boolean beamed) {}
