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
 * Collects the tunings that a part tells (MusicXML 4.0, elements scordatura and staff-tuning): a
 * sign of scordatura numbers strings from high to low and may name some alone; a staff tuning names
 * the strings by the lines of a tablature staff, from the lowest line up.
 */
public final class TuningMarks {
  private static final int HIGHEST_OCTAVE = 9;

  /**
   * A tuning.
   *
   * @param measure number of the measure in which it stands, as printed
   * @param strings the open strings it names, by number, 1 for the highest
   * @param whole whether the instrument has no others
   */
  public record Told(String measure, ImmutableSortedMap<Integer, Pitch> strings, boolean whole) {
    private Told in(String other) {
      return new Told(other, strings, whole);
    }
  }

  private final Set<Told> seen = new LinkedHashSet<>();
  private final ImmutableList.Builder<Told> all = ImmutableList.builder();

  private void add(Told told) {
    if (!told.strings().isEmpty() && seen.add(told.in(""))) {
      all.add(told);
    }
  }

  /** Takes the sign of a scordatura. */
  public void sign(Scordatura sign, String measure) {
    ImmutableSortedMap.Builder<Integer, Pitch> strings = ImmutableSortedMap.naturalOrder();
    Set<Integer> numbers = new LinkedHashSet<>();
    for (Accord accord : sign.getAccord()) {
      if (accord.getString() != null && numbers.add(accord.getString().intValue())) {
        pitch(accord.getTuningStep(), accord.getTuningAlter(), accord.getTuningOctave())
            .ifPresent(pitch -> strings.put(accord.getString().intValue(), pitch));
      }
    }
    add(new Told(measure, strings.buildOrThrow(), false));
  }

  /** Takes the tuning of a staff. */
  public void staff(StaffDetails details, String measure) {
    ImmutableSortedMap.Builder<Integer, Pitch> strings = ImmutableSortedMap.naturalOrder();
    Set<Integer> lines = new LinkedHashSet<>();
    int count = details.getStaffTuning().size();
    for (StaffTuning tuning : details.getStaffTuning()) {
      int line = tuning.getLine() == null ? 0 : tuning.getLine().intValue();
      Optional<Pitch> pitch =
          pitch(tuning.getTuningStep(), tuning.getTuningAlter(), tuning.getTuningOctave());
      if (line < 1 || line > count || !lines.add(line) || pitch.isEmpty()) {
        return;
      }
      strings.put(count + 1 - line, pitch.get());
    }
    add(new Told(measure, strings.buildOrThrow(), true));
  }

  /** The pitch of a string; empty where that is none, which is not worth refusing a score for. */
  public static Optional<Pitch> pitch(Step step, BigDecimal alteration, int octave) {
    double alter = alteration == null ? 0 : alteration.doubleValue();
    if (step == null || Math.abs(alter) > 2 || octave < 0 || octave > HIGHEST_OCTAVE) {
      return Optional.empty();
    }
    return Optional.of(new Pitch(Letter.valueOf(step.value()), (int) alter, octave));
  }

  /** The tunings, each once. */
  public ImmutableList<Told> all() {
    return all.build();
  }
}
