package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.TuningMarks.Told;
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
 * What a part tells of its tuning. Strings that are added to the usual ones are taken as they are.
 * Where strings are tuned otherwise, the part is most often written as fingered (common practice),
 * and nothing in it says so: it is read for the usual tuning, and that is told.
 */
final class TuningReading {
  private static final int TOLD = 3;

  private TuningReading() {}

  /** The instrument with the strings that the part adds to the usual ones, where it does. */
  static Instrument strung(PartTimeline timeline, Instrument instrument) {
    return timeline.tunings().stream()
        .flatMap(told -> known(instrument, strings(told, instrument)).stream())
        .filter(tuning -> added(tuning, instrument))
        .findFirst()
        .map(instrument::tuned)
        .orElse(instrument);
  }

  private static boolean added(Tuning tuning, Instrument instrument) {
    return tuning.strings().size() > instrument.strings().size()
        && midi(tuning.strings()).containsAll(midi(instrument.strings()));
  }

  /**
   * What must be said.
   *
   * @param usual the instrument as it is usually tuned
   * @param played the instrument that is planned for
   */
  static ImmutableList<String> remarks(PartTimeline timeline, Instrument usual, Instrument played) {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    for (Told told : timeline.tunings().stream().limit(TOLD).toList()) {
      List<Pitch> strings = strings(told, usual);
      Optional<Tuning> known = known(usual, strings);
      boolean fits = known.isPresent() || strings.size() == usual.strings().size();
      if (strings.stream().map(Pitch::midi).toList().equals(midi(played.strings()))) {
        if (!played.tuning().equals(Tuning.STANDARD)) {
          remarks.add(
              "the part asks for the strings %s in measure %s, and is planned for them, the tuning '%s'; --tuning standard plans it for the usual ones"
                  .formatted(listed(strings), told.measure(), played.tuning()));
        }
      } else if (fits) {
        remarks.add(
            "the part asks for the strings %s in measure %s and is planned for %s: that is right where it is written as fingered, as most such parts are; where it is written as it sounds, plan it with --tuning %s"
                .formatted(
                    listed(strings),
                    told.measure(),
                    listed(played.strings().stream().map(OpenString::pitch).toList()),
                    known.map(Tuning::name).orElse("FILE, a file that names them")));
      }
    }
    return remarks.build();
  }

  private static String listed(List<Pitch> strings) {
    return strings.stream().map(Pitch::display).collect(Collectors.joining(" "));
  }

  /** All strings, the highest first: those that are not told are as usual. */
  private static List<Pitch> strings(Told told, Instrument usual) {
    if (told.whole()) {
      return List.copyOf(told.strings().values());
    }
    List<Pitch> strings = new ArrayList<>();
    for (OpenString string : usual.strings()) {
      strings.add(Optional.ofNullable(told.strings().get(string.number())).orElse(string.pitch()));
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
