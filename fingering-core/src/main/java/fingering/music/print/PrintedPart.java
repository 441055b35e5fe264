package fingering.music.print;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Iterables;
import fingering.music.ChangedSlurs;
import fingering.music.NoteAddress;
import fingering.music.Place;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The printed staff of a part, or of some of its measures. Numbers and lengths are in the
 * {@linkplain fingering.music.Measure measures} of the passage.
 *
 * @param measures the measures, in order
 * @param slurs the slurs that overlap them, in document order of their ends
 * @param tuplets the numbers and brackets of tuplets that overlap them, outer and inner ones, in
 *     document order of their starts
 * @param noteLines the lines from note to note that overlap them
 * @param wedges the hairpins that overlap them, in order of their starts
 * @param textLines the lines after words that overlap them, in order of their starts
 * @param octaveLines the octave lines that overlap them, in order of their starts
 * @param endings the endings of repeats that overlap them, in order
 * @param jumps what the score says about the order of playing, in order of the file
 */
public record PrintedPart(
    ImmutableList<PrintedMeasure> measures,
    ImmutableList<Slur> slurs,
    ImmutableList<Tuplet> tuplets,
    ImmutableList<NoteLine> noteLines,
    ImmutableList<Wedge> wedges,
    ImmutableList<TextLine> textLines,
    ImmutableList<OctaveLine> octaveLines,
    ImmutableList<Ending> endings,
    ImmutableList<JumpMark> jumps) {

  /**
   * A slur.
   *
   * @param from the note where it starts
   * @param to the note where it ends
   * @param side the side to which it curves
   */
  public record Slur(NoteAddress from, NoteAddress to, Side side) {}

  /**
   * What is printed over or under a tuplet.
   *
   * @param from its first note or rest
   * @param to its last note or rest
   * @param actual the notes in it: 3 for a triplet
   * @param normal the notes in whose time they are played: 2 for a triplet
   * @param bracket whether it has a bracket; empty if the score does not say
   * @param shown the numbers that are printed
   * @param side the side of the notes
   */
  public record Tuplet(
      NoteAddress from,
      NoteAddress to,
      int actual,
      int normal,
      Optional<Boolean> bracket,
      Numbers shown,
      Side side) {

    /** The printed numbers of a tuplet. */
    public enum Numbers {
      NONE,
      /** The number of notes: 3. */
      ACTUAL,
      /** Both numbers: 3:2. */
      BOTH
    }
  }

  /**
   * A line from a note to a note.
   *
   * @param kind the kind of line
   * @param from the note where it starts
   * @param to the note where it ends; the same for the line of a trill on one note
   */
  public record NoteLine(Kind kind, NoteAddress from, NoteAddress to) {

    /** A kind of line from a note to a note. */
    public enum Kind {
      /** The wavy line after a trill, to the end of the last note. */
      TRILL,
      /** The straight line of a slide. */
      SLIDE,
      /** The wavy line of a glissando. */
      GLISSANDO
    }
  }

  /**
   * A hairpin.
   *
   * @param from the place where it starts
   * @param to the place where it ends
   * @param start start in quarter notes from the start of the part
   * @param end end in quarter notes from the start of the part, after the start
   * @param louder whether it is a crescendo
   * @param side the side of the staff
   */
  public record Wedge(
      Place from, Place to, BigFraction start, BigFraction end, boolean louder, Side side) {}

  /**
   * A line after words, or over notes: the dashes of <i>cresc. - - -</i>, the line of <i>sul G</i>.
   *
   * @param from the place where it starts
   * @param to the place where it ends
   * @param start start in quarter notes from the start of the part
   * @param end end in quarter notes from the start of the part, after the start
   * @param style how it is drawn
   * @param startHook whether it begins with a hook towards the staff
   * @param endHook whether it ends with a hook towards the staff
   * @param direction number of the direction in which it starts; the {@linkplain
   *     PrintedText#direction texts} with this number stand before the line
   * @param side the side of the staff
   */
  public record TextLine(
      Place from,
      Place to,
      BigFraction start,
      BigFraction end,
      Style style,
      boolean startHook,
      boolean endHook,
      int direction,
      Side side) {

    /** How a line is drawn. */
    public enum Style {
      /** Short dashes with wide gaps. */
      DASHES,
      SOLID,
      DASHED,
      DOTTED
    }
  }

  /**
   * An octave line. The {@linkplain PrintedNote#pitch pitches} of the notes under it are those
   * played as the clef says; an engraver that draws the line prints them shifted, and one that does
   * not draws them at their pitch.
   *
   * @param from the place where it starts
   * @param to the place where it ends
   * @param start start in quarter notes from the start of the part
   * @param end end in quarter notes from the start of the part, exclusive, after the start
   * @param octaves the octaves to play higher than printed: 1 for {@code 8va}, 2 for {@code 15ma},
   *     -1 for {@code 8vb}
   */
  public record OctaveLine(Place from, Place to, BigFraction start, BigFraction end, int octaves) {}

  /**
   * An ending of a repeat.
   *
   * @param first index of its first measure
   * @param last index of its last measure
   * @param number the printed number, for example {@code 1} or {@code 1, 2}
   * @param closed whether its bracket is closed at the end
   */
  public record Ending(int first, int last, String number, boolean closed) {}

  /** Words, dynamics and other texts of all measures, in order of time. */
  public ImmutableList<PrintedText> texts() {
    return measures.stream()
        .flatMap(measure -> measure.texts().stream())
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * The octaves by which a note is printed lower than its pitch; 0 outside of octave lines.
   *
   * @param start start of the note in quarter notes from the start of the part
   */
  public int octavesAt(BigFraction start) {
    return octaveLines.stream()
        .filter(line -> line.start().compareTo(start) <= 0 && line.end().compareTo(start) > 0)
        .mapToInt(OctaveLine::octaves)
        .sum();
  }

  /**
   * The same staff restricted to some measures, by index in the part, and to one voice if given.
   */
  public PrintedPart only(int first, int last, Optional<String> voice) {
    Predicate<PrintedNote> inVoice =
        note -> voice.isEmpty() || note.voice().equals(voice.orElseThrow());
    return new PrintedPart(
        measures.stream()
            .filter(measure -> measure.index() >= first && measure.index() <= last)
            .map(measure -> measure.withNotes(inVoice))
            .collect(ImmutableList.toImmutableList()),
        overlapping(slurs, slur -> overlap(slur.from(), slur.to(), first, last)),
        overlapping(tuplets, tuplet -> overlap(tuplet.from(), tuplet.to(), first, last)),
        overlapping(noteLines, line -> overlap(line.from(), line.to(), first, last)),
        overlapping(wedges, wedge -> overlap(wedge.from(), wedge.to(), first, last)),
        overlapping(textLines, line -> overlap(line.from(), line.to(), first, last)),
        overlapping(octaveLines, line -> overlap(line.from(), line.to(), first, last)),
        overlapping(endings, ending -> ending.last() >= first && ending.first() <= last),
        overlapping(jumps, jump -> overlap(jump.place(), jump.place(), first, last)));
  }

  /** The same staff with these measures instead of its own, which have the same indices. */
  public PrintedPart withMeasures(ImmutableList<PrintedMeasure> others) {
    return new PrintedPart(
        others, slurs, tuplets, noteLines, wedges, textLines, octaveLines, endings, jumps);
  }

  /** The same staff with these jumps instead of its own. */
  public PrintedPart withJumps(ImmutableList<JumpMark> others) {
    return new PrintedPart(
        measures, slurs, tuplets, noteLines, wedges, textLines, octaveLines, endings, others);
  }

  /** The same staff with changed slurs. */
  public PrintedPart withSlurs(ChangedSlurs changed) {
    if (changed.isEmpty()) {
      return this;
    }
    return new PrintedPart(
        measures,
        ImmutableList.sortedCopyOf(
            Comparator.comparing(Slur::to),
            Iterables.concat(
                Iterables.filter(slurs, slur -> !removes(changed, slur)),
                Iterables.transform(
                    changed.added(), slur -> new Slur(slur.from(), slur.to(), Side.AUTO)))),
        tuplets,
        noteLines,
        wedges,
        textLines,
        octaveLines,
        endings,
        jumps);
  }

  /** Whether a slur is removed. One that ends at a hidden note is printed shorter. */
  private boolean removes(ChangedSlurs changed, Slur slur) {
    return changed.removed().stream()
        .anyMatch(
            off ->
                off.from().equals(slur.from())
                    && (off.to().equals(slur.to())
                        || (off.covers(slur.to())
                            && slurs.stream().noneMatch(other -> isSame(off, other)))));
  }

  private static boolean isSame(ChangedSlurs.Slur one, Slur other) {
    return one.from().equals(other.from()) && one.to().equals(other.to());
  }

  private static <T> ImmutableList<T> overlapping(ImmutableList<T> all, Predicate<T> wanted) {
    return all.stream().filter(wanted).collect(ImmutableList.toImmutableList());
  }

  private static boolean overlap(NoteAddress from, NoteAddress to, int first, int last) {
    return to.measure() >= first && from.measure() <= last;
  }

  private static boolean overlap(Place from, Place to, int first, int last) {
    return to.measureIndex() >= first && from.measureIndex() <= last;
  }
}
