package fingering.demand;

import com.google.common.collect.ArrayListMultimap;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ListMultimap;
import com.google.common.collect.Range;
import fingering.music.Measure;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import fingering.tables.Pitch;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * A plan that was made before, perhaps of more measures than are planned now.
 *
 * @param source what to call it, its file say
 * @param notes its notes, in score order
 */
public record EarlierPlan(String source, ImmutableList<PlannedBefore> notes) {
  private static final int NAMED = 2;
  private static final int ONSET_DIGITS = 6;

  /**
   * A note of such a plan.
   *
   * @param measure its measure's number as printed
   * @param measureIndex index of the measure in the part, from 0; empty where it is not known
   * @param onset quarter notes from the start of the measure, to six decimals
   * @param written the note as printed
   * @param midi the sounding MIDI number
   * @param taken how it is taken
   */
  public record PlannedBefore(
      String measure,
      OptionalInt measureIndex,
      BigDecimal onset,
      Pitch written,
      int midi,
      KeepPlan.Taken taken) {}

  /** A place in the passage that notes begin at, and what begins there. */
  private record Spot(int measure, BigDecimal onset) {}

  private record Key(Spot spot, String written, int midi) {}

  /** A note of the plan that the passage has not. */
  private record Stray(PlannedBefore note, Spot spot) {}

  /**
   * The demand to take the notes of a passage as the plan does, as far as the plan has them.
   *
   * <p>A measure is found by its index, as long as it bears the same number still; else, and where
   * the plan has no index, by its number: where that is repeated, the first in the plan is the
   * first in the passage, and so on. Notes of one pitch at one place, as grace notes may be, are
   * paired in their order.
   *
   * @param span the measures to take them in
   * @throws FingeringException if the plan has a note there that the passage has not, or none that
   *     it has; the message is one sentence
   */
  public KeepPlan on(Passage passage, MeasureSpan span) {
    Range<Integer> wanted = span.measures(passage);
    ListMultimap<Key, NoteAddress> there = ArrayListMultimap.create();
    ListMultimap<Spot, String> names = ArrayListMultimap.create();
    passage
        .notes()
        .forEach(
            note -> {
              BigDecimal onset =
                  plain(note.place().onset().bigDecimalValue(ONSET_DIGITS, RoundingMode.HALF_UP));
              Spot spot = new Spot(note.place().measureIndex(), onset);
              there.put(new Key(spot, note.written().toString(), note.midi()), note.address());
              names.put(spot, note.written().display());
            });
    ImmutableMap.Builder<NoteAddress, KeepPlan.Taken> taken = ImmutableMap.builder();
    List<Stray> strays = new ArrayList<>();
    int found = 0;
    ImmutableList<OptionalInt> measures = measures(passage);
    for (int i = 0; i < notes.size(); i++) {
      PlannedBefore note = notes.get(i);
      if (measures.get(i).isEmpty() || !wanted.contains(measures.get(i).getAsInt())) {
        continue;
      }
      Spot spot = new Spot(measures.get(i).getAsInt(), plain(note.onset()));
      List<NoteAddress> candidates =
          there.get(new Key(spot, note.written().toString(), note.midi()));
      if (candidates.isEmpty()) {
        strays.add(new Stray(note, spot));
      } else {
        taken.put(candidates.remove(0), note.taken());
        found++;
      }
    }
    if (!strays.isEmpty()) {
      throw new FingeringException(unlike(strays, names));
    }
    if (found == 0) {
      throw new FingeringException(
          source
              + " has no note"
              + span.told()
              + " of "
              + passage.partName()
              + ", measures "
              + passage.measures().get(0).number()
              + " to "
              + passage.measures().get(passage.measures().size() - 1).number()
              + "; give a plan of these measures.");
    }
    return new KeepPlan(source, taken.buildOrThrow(), span);
  }

  private static BigDecimal plain(BigDecimal onset) {
    return onset.setScale(ONSET_DIGITS, RoundingMode.HALF_UP);
  }

  /** The measure of the passage in which each note stands; empty where the passage has it not. */
  private ImmutableList<OptionalInt> measures(Passage passage) {
    Map<Integer, String> numbers = new HashMap<>();
    ListMultimap<String, Integer> indices = ArrayListMultimap.create();
    for (Measure measure : passage.measures()) {
      numbers.put(measure.index(), measure.number());
      indices.put(measure.number(), measure.index());
    }
    ImmutableList.Builder<OptionalInt> found = ImmutableList.builder();
    Map<String, Integer> times = new HashMap<>();
    for (int i = 0; i < notes.size(); i++) {
      PlannedBefore note = notes.get(i);
      if (i == 0 || leaves(notes.get(i - 1), note)) {
        times.merge(note.measure(), 1, Integer::sum);
      }
      OptionalInt index = note.measureIndex();
      if (index.isPresent()) {
        String number = numbers.get(index.getAsInt());
        if (number == null || number.equals(note.measure())) {
          found.add(number == null ? OptionalInt.empty() : index);
          continue;
        }
      }
      List<Integer> alike = indices.get(note.measure());
      int time = Objects.requireNonNull(times.get(note.measure()));
      found.add(
          alike.isEmpty() || time > alike.size()
              ? OptionalInt.empty()
              : OptionalInt.of(alike.get(time - 1)));
    }
    return found.build();
  }

  /** Whether a note stands in another measure than the one before. */
  private static boolean leaves(PlannedBefore before, PlannedBefore note) {
    return !note.measure().equals(before.measure())
        || !note.measureIndex().equals(before.measureIndex())
        || note.onset().compareTo(before.onset()) < 0;
  }

  private String unlike(List<Stray> strays, ListMultimap<Spot, String> names) {
    int more = strays.size() - NAMED;
    return source
        + " is no plan of this music: it has "
        + strays.stream()
            .limit(NAMED)
            .map(stray -> told(stray, names.get(stray.spot())))
            .collect(Collectors.joining(", and "))
        + (more > 0 ? ", and " + more + (more == 1 ? " note" : " notes") + " more unlike" : "")
        + "; plan this music anew, or take the measures of it that fit.";
  }

  private static String told(Stray stray, List<String> there) {
    return stray.note().written().display()
        + " in measure "
        + stray.note().measure()
        + ", onset "
        + stray.note().onset().stripTrailingZeros().toPlainString()
        + ", where the score has "
        + (there.isEmpty() ? "no note" : String.join("+", there));
  }
}
