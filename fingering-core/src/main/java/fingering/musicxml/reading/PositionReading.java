package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.primitives.Ints;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.PrintedPosition;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.Stretch;
import fingering.musicxml.words.PositionWords;
import fingering.musicxml.words.PositionWords.Instruction;
import fingering.musicxml.xml.XmlText;
import fingering.tables.Instrument;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Applies words that name a position to the moments of a passage. */
final class PositionReading {
  private PositionReading() {}

  /** Whether words are not read: they leave a choice, or only say to stay. */
  private static boolean isUnread(Stretch<Instruction> stretch) {
    return stretch.meaning().kind() == PositionWords.Kind.CHOICE
        || stretch.meaning().kind() == PositionWords.Kind.STAY;
  }

  /** Returns remarks on words that are not read, without full stop. */
  static ImmutableList<String> remarks(PartTimeline timeline, List<Moment> moments) {
    Map<String, Set<String>> measures = new LinkedHashMap<>();
    for (Stretch<Instruction> stretch : timeline.positions()) {
      if (isUnread(stretch) && !timeline.starting(moments, stretch::holds).isEmpty()) {
        measures
            .computeIfAbsent(stretch.words(), words -> new LinkedHashSet<>())
            .add(timeline.measures().get(stretch.measure()).number());
      }
    }
    return measures.entrySet().stream()
        .map(
            entry ->
                "'%s' in %s %s is not read: write the position you want into the part, or ask for it in these measures"
                    .formatted(
                        XmlText.printable(entry.getKey()),
                        entry.getValue().size() == 1 ? "measure" : "measures",
                        XmlText.listed(ImmutableList.copyOf(entry.getValue()))))
        .collect(ImmutableList.toImmutableList());
  }

  private static boolean isNumeral(Stretch<Instruction> stretch) {
    return stretch.meaning().kind() == PositionWords.Kind.NUMERAL;
  }

  /** Returns the positions that words name in a passage. */
  static ImmutableList<PrintedPosition> of(
      PartTimeline timeline, Instrument instrument, List<Moment> moments) {
    ImmutableList.Builder<PrintedPosition> all = ImmutableList.builder();
    for (Stretch<Instruction> stretch : timeline.positions()) {
      List<Note> notes = timeline.starting(moments, stretch::holds);
      if (!notes.isEmpty()
          && !isUnread(stretch)
          && !(isNumeral(stretch) && isHeading(timeline, stretch))) {
        boolean unclear = isNumeral(stretch) && mayBeString(stretch, instrument, notes.get(0));
        all.add(
            new PrintedPosition(
                stretch.words(),
                unclear ? Optional.empty() : stretch.meaning().position(),
                notes.get(0).place(),
                notes.get(notes.size() - 1).place(),
                stretch.endedBy(),
                notes.stream().map(Note::address).collect(ImmutableSet.toImmutableSet())));
      }
    }
    return all.build();
  }

  /**
   * Whether a numeral may name a string: the string exists and has the note. A numeral with a full
   * stop is doubtful too, because it may number a list.
   */
  private static boolean mayBeString(
      Stretch<Instruction> stretch, Instrument instrument, Note first) {
    int number = stretch.meaning().position().orElseThrow().number();
    return stretch.words().endsWith(".")
        || (number <= instrument.strings().size()
            && instrument.string(number).pitch().midi() <= first.midi());
  }

  /**
   * Whether a numeral is the number of a movement: at the beginning, after a double bar, or where
   * the measure numbers start again.
   */
  private static boolean isHeading(PartTimeline timeline, Stretch<Instruction> stretch) {
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
        || startsAgain(measures.get(measure - 1).number(), measures.get(measure).number());
  }

  private static boolean startsAgain(String before, String number) {
    Optional<Integer> now = Optional.ofNullable(Ints.tryParse(number));
    return now.isPresent()
        && (now.get() <= 1
            || Optional.ofNullable(Ints.tryParse(before))
                .map(count -> now.get() < count)
                .orElse(false));
  }
}
