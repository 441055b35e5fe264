package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.PrintedString;
import fingering.music.PrintedString.End;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.StringMarks.Stretch;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.StringNames;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The words for one string that a passage has, as its instrument is strung.
 *
 * @param asked the words and what they hold for
 * @param remarks what must be said of them
 */
record StringReading(ImmutableList<PrintedString> asked, ImmutableList<String> remarks) {
  private static final int TOLD = 6;

  /**
   * Beyond an octave and a fifth above the open string, in semitones, words without a line hold no
   * more (common practice, no source).
   */
  private static final int CEILING = 19;

  /** Reads the words of a part for the moments of a passage. */
  static StringReading of(
      PartTimeline timeline, Instrument instrument, ImmutableList<Moment> moments) {
    ImmutableList.Builder<PrintedString> asked = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    for (Stretch stretch : timeline.strings()) {
      List<Note> all = timeline.starting(moments, stretch::holds);
      if (all.isEmpty()) {
        continue;
      }
      Optional<OpenString> string = string(stretch, instrument);
      if (string.isEmpty()) {
        remarks.add(
            "'%s' in measure %s names no string of the %s and is left out of account"
                .formatted(stretch.words(), stretch.measure(), instrument.spoken()));
        continue;
      }
      List<Note> notes =
          stretch.why() == End.LINE ? all : upTo(string.get().pitch().midi() + CEILING, all);
      asked.add(
          new PrintedString(
              stretch.words(),
              string.get().number(),
              notes.get(0).place(),
              notes.get(notes.size() - 1).place(),
              notes.size() < all.size() ? End.CLIMB : stretch.why(),
              notes.stream().map(Note::address).collect(ImmutableSet.toImmutableSet())));
    }
    ImmutableList<PrintedString> found = asked.build();
    if (!found.isEmpty()) {
      remarks.add(told(found));
    }
    return new StringReading(found, remarks.build());
  }

  /** The notes before the first that lies higher; where the words stand that high, above that. */
  private static List<Note> upTo(int ceiling, List<Note> notes) {
    int most = Math.max(ceiling, notes.get(0).midi());
    for (int i = 0; i < notes.size(); i++) {
      if (notes.get(i).midi() > most) {
        return notes.subList(0, i);
      }
    }
    return notes;
  }

  private static Optional<OpenString> string(Stretch stretch, Instrument instrument) {
    try {
      return Optional.of(StringNames.of(instrument).find(stretch.string()));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  private static String told(ImmutableList<PrintedString> asked) {
    int more = asked.size() - TOLD;
    return "plans keep to one string where words ask for it: "
        + asked.stream()
            .limit(TOLD)
            .map(one -> one.description() + " (to " + one.end().description() + ")")
            .collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + (more == 1 ? " place more" : " places more") : "")
        + "; --ignore-words leaves them out of account";
  }
}
