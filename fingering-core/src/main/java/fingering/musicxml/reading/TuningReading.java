package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.TuningMarks.PartTuning;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Tuning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Applies the tunings that a part states. Additional strings are used. If strings are retuned, the
 * part is usually written as fingered (common practice), but does not say so. It is then read for
 * the usual tuning, with a remark.
 */
final class TuningReading {
  private static final int LISTED = 3;

  private TuningReading() {}

  /** Returns the instrument with the strings that the part adds, if it adds any. */
  static Instrument withAddedStrings(PartTimeline timeline, Instrument instrument) {
    return timeline.tunings().stream()
        .flatMap(stated -> known(instrument, strings(stated, instrument)).stream())
        .filter(tuning -> added(tuning, instrument))
        .findFirst()
        .map(instrument::tuned)
        .orElse(instrument);
  }

  private static boolean added(Tuning tuning, Instrument instrument) {
    return tuning.strings().size() > instrument.strings().size()
        && midi(tuning.strings()).containsAll(midi(instrument.strings()));
  }

  /** Returns a remark on how a part is read for an instrument that is not in its usual tuning. */
  static Optional<String> remark(Instrument played) {
    return played.tuning().equals(Tuning.STANDARD)
        ? Optional.empty()
        : Optional.of(
            "the tuning is '%s' (%s) and the notes are read at sounding pitch; plan a part that is written as fingered in the usual tuning"
                .formatted(played.tuning(), listed(pitches(played))));
  }

  /**
   * Returns remarks on the tunings of the part.
   *
   * @param usual the instrument in its usual tuning
   * @param played the instrument that the part is read for
   */
  static ImmutableList<String> remarks(PartTimeline timeline, Instrument usual, Instrument played) {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    for (PartTuning stated : timeline.tunings().stream().limit(LISTED).toList()) {
      List<Pitch> strings = strings(stated, usual);
      Optional<Tuning> known = known(usual, strings);
      boolean fits = known.isPresent() || strings.size() == usual.strings().size();
      if (strings.stream().map(Pitch::midi).toList().equals(midi(played.strings()))) {
        if (!played.tuning().equals(Tuning.STANDARD)) {
          remarks.add(
              "the part asks for the strings %s in measure %s and is planned for this tuning, '%s'; choose the tuning 'standard' to plan it for the usual strings"
                  .formatted(listed(strings), stated.measure(), played.tuning()));
        }
      } else if (!fits) {
        remarks.add(
            "the part asks for the strings %s in measure %s, which is no tuning of the %s; it is planned for %s: choose another tuning or instrument"
                .formatted(
                    listed(strings),
                    stated.measure(),
                    usual.nameInSentence(),
                    listed(pitches(played))));
      } else {
        remarks.add(
            "the part asks for the strings %s in measure %s and is planned for %s, which is right if it is written as fingered, like most such parts; if it is written at sounding pitch, choose the tuning %s"
                .formatted(
                    listed(strings),
                    stated.measure(),
                    listed(pitches(played)),
                    known
                        .map(tuning -> "'" + tuning.name() + "'")
                        .orElse("of a file that lists them")));
      }
    }
    return remarks.build();
  }

  private static List<Pitch> pitches(Instrument instrument) {
    return instrument.strings().stream().map(OpenString::pitch).toList();
  }

  private static String listed(List<Pitch> strings) {
    return strings.stream().map(Pitch::display).collect(Collectors.joining(" "));
  }

  /** All strings, the highest first; strings that the part does not state are as usual. */
  private static List<Pitch> strings(PartTuning stated, Instrument usual) {
    if (stated.whole()) {
      return List.copyOf(stated.strings().values());
    }
    List<Pitch> strings = new ArrayList<>();
    for (OpenString string : usual.strings()) {
      strings.add(
          Optional.ofNullable(stated.strings().get(string.number())).orElse(string.pitch()));
    }
    return strings;
  }

  private static Optional<Tuning> known(Instrument instrument, List<Pitch> strings) {
    List<Integer> wanted = strings.stream().map(Pitch::midi).toList();
    return Instruments.standard().tunings(instrument).stream()
        .filter(tuning -> midi(tuning.strings()).equals(wanted))
        .findFirst();
  }

  private static List<Integer> midi(List<OpenString> strings) {
    return strings.stream().map(string -> string.pitch().midi()).toList();
  }
}
