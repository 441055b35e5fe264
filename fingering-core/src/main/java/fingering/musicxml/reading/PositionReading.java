package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.primitives.Ints;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.PrintedMeasure.Bar;
import fingering.music.PrintedPosition;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.PositionMarks.Stretch;
import fingering.tables.Instrument;
import java.util.List;
import java.util.Optional;

/** Reads the words that name a position for the moments of a passage. */
final class PositionReading {
  private PositionReading() {}

  static ImmutableList<PrintedPosition> of(
      PartTimeline timeline, Instrument instrument, List<Moment> moments) {
    ImmutableList.Builder<PrintedPosition> all = ImmutableList.builder();
    for (Stretch stretch : timeline.positions()) {
      List<Note> notes = timeline.starting(moments, stretch::holds);
      if (!notes.isEmpty() && !(stretch.numeral() && heading(timeline, stretch))) {
        boolean unclear = stretch.numeral() && maybeString(stretch, instrument, notes.get(0));
        all.add(
            new PrintedPosition(
                stretch.words(),
                unclear ? Optional.empty() : Optional.of(stretch.position()),
                notes.get(0).place(),
                notes.get(notes.size() - 1).place(),
                stretch.why(),
                notes.stream().map(Note::address).collect(ImmutableSet.toImmutableSet())));
      }
    }
    return all.build();
  }

  /**
   * A numeral means no string where there is none so numbered, or the note lies below it. One with
   * a full stop may count something else.
   */
  private static boolean maybeString(Stretch stretch, Instrument instrument, Note first) {
    int number = stretch.position().number();
    return stretch.words().endsWith(".")
        || (number <= instrument.strings().size()
            && instrument.string(number).pitch().midi() <= first.midi());
  }

  /**
   * A numeral at the beginning of a movement counts the movements. Where several lie in one file, a
   * movement begins behind a double bar or with measures that are counted anew.
   */
  private static boolean heading(PartTimeline timeline, Stretch stretch) {
    List<Measure> measures = timeline.measures();
    int measure = stretch.measure();
    if (!stretch.start().equals(measures.get(measure).start())) {
      return false;
    }
    if (measure == 0) {
      return true;
    }
    Bar before = timeline.print().measures().get(measure - 1).end();
    return before == Bar.FINAL
        || before == Bar.DOUBLE
        || anew(measures.get(measure - 1).number(), measures.get(measure).number());
  }

  private static boolean anew(String before, String number) {
    Optional<Integer> now = Optional.ofNullable(Ints.tryParse(number));
    return now.isPresent()
        && (now.get() <= 1
            || Optional.ofNullable(Ints.tryParse(before))
                .map(count -> now.get() < count)
                .orElse(false));
  }
}
