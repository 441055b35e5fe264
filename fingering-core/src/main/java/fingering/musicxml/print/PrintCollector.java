package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart;
import fingering.musicxml.element.NoteTime;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Key;
import org.audiveris.proxymusic.MeasureStyle;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.Time;

/** Collects what is printed on the staff of a part while the part is read. */
public final class PrintCollector {
  private final List<PrintedMeasure> measures = new ArrayList<>();
  private final PrintedSignatures signatures = new PrintedSignatures();
  private final NoteSpans spans = new NoteSpans();
  private final PrintedBars bars = new PrintedBars();
  private final PrintedDirections directions = new PrintedDirections();
  private final PrintedJumps jumps = new PrintedJumps();
  private List<PrintedNote> notes = new ArrayList<>();

  /** Adds a clef; those of other staves than the first are ignored. */
  public void clef(Clef clef, BigFraction onset) {
    signatures.clef(clef, onset);
  }

  /**
   * Adds a key signature.
   *
   * @param before number of sharps before, negative for flats
   * @param fifths number of sharps after, negative for flats
   */
  public void key(Key key, int before, int fifths, BigFraction onset) {
    signatures.key(key, before, fifths, onset);
  }

  /** Adds a time signature. One that cannot be read is left out. */
  public void time(Time time, BigFraction onset) {
    signatures.time(time, onset);
  }

  /** Adds the style of measures, such as a rest of several measures. */
  public void style(MeasureStyle style) {
    signatures.style(style);
  }

  /** Adds the dynamics of a note element, even if the note is not shown. */
  public void dynamics(Note note, int measure, BigFraction onset) {
    directions.note(note, new Position(measure, onset));
  }

  /**
   * Adds a note or a rest, with its slurs.
   *
   * @param tied whether a tie begins at it
   * @param pitch its pitch; empty for a rest
   */
  public void note(Note note, NoteTime time, boolean tied, Optional<Pitch> pitch) {
    notes.add(PrintedNotes.of(note, time, tied, pitch));
    spans.note(note, time, true);
  }

  /** Adds a note or a rest that is not shown. It ends slurs all the same. */
  public void unseen(Note note, NoteTime time) {
    spans.note(note, time, false);
  }

  /**
   * Adds the words, dynamics and lines of a direction.
   *
   * @param measure index of the measure, from 0
   * @param onset where it is printed, in quarter notes from the start of the measure
   */
  public void direction(Direction direction, int measure, BigFraction onset) {
    directions.direction(direction, new Position(measure, onset));
  }

  /**
   * Adds the jumps of a playback element.
   *
   * @param measure index of the measure, from 0
   * @param onset where they hold, in quarter notes from the start of the measure
   */
  public void sound(Sound sound, int measure, BigFraction onset) {
    jumps.add(sound, new Position(measure, onset));
  }

  /** Adds a bar line. */
  public void bar(Barline bar, int measure, BigFraction onset) {
    bars.add(bar, measure, onset);
  }

  /**
   * Ends the measure with this index.
   *
   * @param numbered whether it counts
   */
  public void endMeasure(int index, boolean numbered) {
    bars.before().ifPresent(this::endBefore);
    measures.add(
        new PrintedMeasure(
            index,
            numbered,
            signatures.atStart(),
            signatures.afterBar(),
            signatures.clefs(),
            signatures.keyAtStart(),
            signatures.keysWithin(),
            signatures.times(),
            signatures.multipleRest(),
            ImmutableList.copyOf(notes),
            ImmutableList.of(),
            bars.repeatStart(),
            bars.inner(),
            bars.end(),
            bars.times(),
            bars.fermata()));
    signatures.endMeasure();
    bars.beginMeasure();
    notes = new ArrayList<>();
  }

  // Two measures share the line between them; the end of the first one usually states it.
  private void endBefore(Bar bar) {
    if (!measures.isEmpty()) {
      PrintedMeasure last = measures.get(measures.size() - 1);
      if (last.end() == Bar.SINGLE) {
        measures.set(measures.size() - 1, last.withEnd(bar));
      }
    }
  }

  /**
   * Returns the printed part.
   *
   * @param read the measures of the part
   */
  public PrintedPart part(List<Measure> read) {
    ImmutableList.Builder<PrintedMeasure> complete = ImmutableList.builder();
    for (PrintedMeasure measure : measures) {
      complete.add(measure.withTexts(directions.texts(measure.index(), read)));
    }
    spans.end();
    return new PrintedPart(
        complete.build(),
        spans.slurs(),
        spans.tuplets().isEmpty() ? UnmarkedTuplets.of(measures) : spans.tuplets(),
        spans.lines(),
        directions.lines().wedges(read),
        directions.lines().textLines(read),
        directions.lines().octaveLines(read),
        bars.endings(),
        jumps.in(read));
  }
}
