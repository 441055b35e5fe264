package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedMap;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.audiveris.proxymusic.Accord;
import org.audiveris.proxymusic.Scordatura;
import org.audiveris.proxymusic.StaffDetails;
import org.audiveris.proxymusic.StaffTuning;
import org.audiveris.proxymusic.Step;

/**
 * Collects the tunings that a part states (MusicXML 4.0, elements scordatura and staff-tuning). A
 * scordatura numbers strings from high to low and may give only some of them. A staff tuning gives
 * all strings by the lines of a tablature staff, from the lowest line up.
 */
public final class TuningMarks {
  private static final int HIGHEST_OCTAVE = 9;

  /**
   * A tuning that a part states.
   *
   * @param measure printed number of its measure
   * @param strings the open strings that it gives, by number, 1 for the highest
   * @param whole whether the instrument has no other strings
   */
  public record PartTuning(
      String measure, ImmutableSortedMap<Integer, Pitch> strings, boolean whole) {
    private PartTuning withMeasure(String other) {
      return new PartTuning(other, strings, whole);
    }
  }

  private final Set<PartTuning> seen = new LinkedHashSet<>();
  private final ImmutableList.Builder<PartTuning> all = ImmutableList.builder();

  private void add(PartTuning tuning) {
    if (!tuning.strings().isEmpty() && seen.add(tuning.withMeasure(""))) {
      all.add(tuning);
    }
  }

  /** Adds a scordatura. Returns whether each of its strings can be read. */
  public boolean scordatura(Scordatura sign, String measure) {
    ImmutableSortedMap.Builder<Integer, Pitch> strings = ImmutableSortedMap.naturalOrder();
    Set<Integer> numbers = new LinkedHashSet<>();
    for (Accord accord : sign.getAccord()) {
      if (accord.getString() != null && numbers.add(accord.getString().intValue())) {
        pitch(accord.getTuningStep(), accord.getTuningAlter(), accord.getTuningOctave())
            .ifPresent(pitch -> strings.put(accord.getString().intValue(), pitch));
      }
    }
    ImmutableSortedMap<Integer, Pitch> read = strings.buildOrThrow();
    boolean complete = read.size() == sign.getAccord().size();
    if (complete) {
      add(new PartTuning(measure, read, false));
    }
    return complete;
  }

  /** Adds the tuning of a staff, if it has one. Returns whether each of its strings can be read. */
  public boolean staff(StaffDetails details, String measure) {
    ImmutableSortedMap.Builder<Integer, Pitch> strings = ImmutableSortedMap.naturalOrder();
    Set<Integer> lines = new LinkedHashSet<>();
    int count = details.getStaffTuning().size();
    for (StaffTuning tuning : details.getStaffTuning()) {
      int line = tuning.getLine() == null ? 0 : tuning.getLine().intValue();
      Optional<Pitch> pitch =
          pitch(tuning.getTuningStep(), tuning.getTuningAlter(), tuning.getTuningOctave());
      if (line < 1 || line > count || !lines.add(line) || pitch.isEmpty()) {
        return false;
      }
      strings.put(count + 1 - line, pitch.get());
    }
    add(new PartTuning(measure, strings.buildOrThrow(), true));
    return true;
  }

  /**
   * Returns the pitch of a string; empty if it is not a pitch, which is no reason to refuse a
   * score.
   */
  public static Optional<Pitch> pitch(Step step, BigDecimal alteration, int octave) {
    double alter = alteration == null ? 0 : alteration.doubleValue();
    if (step == null || Math.abs(alter) > 2 || octave < 0 || octave > HIGHEST_OCTAVE) {
      return Optional.empty();
    }
    return Optional.of(new Pitch(Letter.valueOf(step.value()), (int) alter, octave));
  }

  /** Returns the tunings, each once. */
  public ImmutableList<PartTuning> all() {
    return all.build();
  }
}
