package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedPart;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the whole part says about the notation of a measure.
 *
 * @param printedBeams whether the part states its beams; if not, they follow the beats
 * @param beat the beat in quarter notes
 * @param tuplets the tuplets of the part that begin in the measure
 * @param octaves the octaves by which a note is printed lower than it sounds, by its time in
 *     quarter notes from the start of the measure
 */
record NotationStyle(
    boolean printedBeams,
    double beat,
    ImmutableList<PrintedPart.Tuplet> tuplets,
    Function<BigFraction, Integer> octaves) {}
