package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.PrintedString;
import fingering.music.PrintedString.End;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.Stretch;
import fingering.musicxml.words.StringWords.Instruction;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.StringNames;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The words of a passage that ask for one string.
 *
 * @param printed the words and the notes that they apply to
 * @param remarks remarks on them, without full stop
 */
record StringReading(ImmutableList<PrintedString> printed, ImmutableList<String> remarks) {
  private static final int LISTED = 6;

  /**
   * Words without a line end before a note this many semitones above the open string: an octave and
   * a fifth (common practice, no source).
   */
  private static final int CEILING = 19;

  /** Applies the words of a part to the moments of a passage. */
  static StringReading of(
      PartTimeline timeline, Instrument instrument, ImmutableList<Moment> moments) {
    ImmutableList.Builder<PrintedString> printed = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    for (Stretch<Instruction> stretch : timeline.strings()) {
      List<Note> all = timeline.starting(moments, stretch::holds);
      if (all.isEmpty()) {
        continue;
      }
      Optional<OpenString> string = string(stretch, instrument);
      if (string.isEmpty()) {
        remarks.add(
            "'%s' in measure %s does not name a string of the %s and is ignored"
                .formatted(
                    stretch.words(),
                    timeline.measures().get(stretch.measure()).number(),
                    instrument.nameInSentence()));
        continue;
      }
      List<Note> notes =
          stretch.endedBy() == End.LINE ? all : upTo(string.get().pitch().midi() + CEILING, all);
      printed.add(
          new PrintedString(
              stretch.words(),
              string.get().number(),
              notes.get(0).place(),
              notes.get(notes.size() - 1).place(),
              notes.size() < all.size() ? End.CLIMB : stretch.endedBy(),
              notes.stream().map(Note::address).collect(ImmutableSet.toImmutableSet())));
    }
    ImmutableList<PrintedString> found = printed.build();
    if (!found.isEmpty()) {
      remarks.add(remark(found));
    }
    return new StringReading(found, remarks.build());
  }

  /**
   * The notes before the first one above the ceiling, or above the first note if that is higher.
   */
  private static List<Note> upTo(int ceiling, List<Note> notes) {
    int most = Math.max(ceiling, notes.get(0).midi());
    for (int i = 0; i < notes.size(); i++) {
      if (notes.get(i).midi() > most) {
        return notes.subList(0, i);
      }
    }
    return notes;
  }

  private static Optional<OpenString> string(Stretch<Instruction> stretch, Instrument instrument) {
    try {
      return Optional.of(StringNames.of(instrument).find(stretch.meaning().string()));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  private static String remark(ImmutableList<PrintedString> printed) {
    int more = printed.size() - LISTED;
    return "plans stay on one string where words ask for it: "
        + printed.stream()
            .limit(LISTED)
            .map(one -> one.description() + " (to " + one.end().description() + ")")
            .collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + (more == 1 ? " more place" : " more places") : "");
  }
}
