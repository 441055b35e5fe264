package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedPart;

/**
 * What the whole part says about the notation of a measure.
 *
 * @param printedBeams whether the part states its beams; if not, they follow the beats
 * @param beat the beat in quarter notes
 * @param tuplets the tuplets of the part that begin in the measure
 */
record NotationStyle(
    boolean printedBeams, double beat, ImmutableList<PrintedPart.Tuplet> tuplets) {}
