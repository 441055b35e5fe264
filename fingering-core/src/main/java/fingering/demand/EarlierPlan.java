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
 * An earlier plan, perhaps of other measures than the passage that is planned now.
 *
 * @param source its name in messages, usually its file
 * @param notes its notes, in score order
 */
public record EarlierPlan(String source, ImmutableList<EarlierNote> notes) {
  /** The most notes that a message names. */
  private static final int MAX_NAMED = 2;

  private static final int ONSET_DIGITS = 6;

  /**
   * A note of an earlier plan.
   *
   * @param measure its measure's number as printed
   * @param measureIndex index of the measure in the part, from 0; empty if unknown
   * @param onset quarter notes from the start of the measure, to six decimals
   * @param written the note as printed
   * @param midi the sounding MIDI number
   * @param fingering its fingering
   */
  public record EarlierNote(
      String measure,
      OptionalInt measureIndex,
      BigDecimal onset,
      Pitch written,
      int midi,
      KeepPlan.KeptFingering fingering) {}

  /** A time at which notes begin: a measure index and an onset within the measure. */
  private record Onset(int measure, BigDecimal onset) {}

  private record Key(Onset onset, String written, int midi) {}

  /** A note of the plan that the passage does not have. */
  private record UnmatchedNote(EarlierNote note, Onset onset) {}

  /**
   * The demand to keep the fingering of this plan for the notes of a passage that it contains.
   *
   * <p>A measure is found by its index if it still has the same number. Otherwise, or if the plan
   * has no index, it is found by its number; of repeated numbers, the first in the plan is the
   * first in the passage, and so on. Notes of the same pitch at the same place, such as grace
   * notes, are matched in order.
   *
   * @param span the measures in which the plan is kept
   * @throws FingeringException if the plan has a note in these measures that the passage does not
   *     have, or no note that it has; the message is one sentence
   */
  public KeepPlan demand(Passage passage, MeasureSpan span) {
    Range<Integer> measures = span.measureIndices(passage);
    ListMultimap<Key, NoteAddress> addresses = ArrayListMultimap.create();
    ListMultimap<Onset, String> names = ArrayListMultimap.create();
    passage
        .notes()
        .forEach(
            note -> {
              Onset onset =
                  new Onset(
                      note.place().measureIndex(),
                      rounded(
                          note.place()
                              .onset()
                              .bigDecimalValue(ONSET_DIGITS, RoundingMode.HALF_UP)));
              addresses.put(new Key(onset, note.written().toString(), note.midi()), note.address());
              names.put(onset, note.written().display());
            });
    ImmutableMap.Builder<NoteAddress, KeepPlan.KeptFingering> fingerings = ImmutableMap.builder();
    List<UnmatchedNote> unmatched = new ArrayList<>();
    int matched = 0;
    ImmutableList<OptionalInt> noteMeasures = measureIndices(passage);
    for (int i = 0; i < notes.size(); i++) {
      EarlierNote note = notes.get(i);
      OptionalInt measure = noteMeasures.get(i);
      if (measure.isEmpty() || !measures.contains(measure.getAsInt())) {
        continue;
      }
      Onset onset = new Onset(measure.getAsInt(), rounded(note.onset()));
      List<NoteAddress> candidates =
          addresses.get(new Key(onset, note.written().toString(), note.midi()));
      if (candidates.isEmpty()) {
        unmatched.add(new UnmatchedNote(note, onset));
      } else {
        fingerings.put(candidates.remove(0), note.fingering());
        matched++;
      }
    }
    if (!unmatched.isEmpty()) {
      throw new FingeringException(mismatch(unmatched, names));
    }
    if (matched == 0) {
      throw new FingeringException(
          source
              + " has no note"
              + span.phrase()
              + " of "
              + passage.partName()
              + ", which has measures "
              + passage.measures().get(0).number()
              + " to "
              + passage.measures().get(passage.measures().size() - 1).number()
              + "; give a plan of these measures.");
    }
    return new KeepPlan(source, fingerings.buildOrThrow(), span);
  }

  private static BigDecimal rounded(BigDecimal onset) {
    return onset.setScale(ONSET_DIGITS, RoundingMode.HALF_UP);
  }

  /** The measure index in the passage of each note; empty if the passage does not have it. */
  private ImmutableList<OptionalInt> measureIndices(Passage passage) {
    Map<Integer, String> numbers = new HashMap<>();
    ListMultimap<String, Integer> indices = ArrayListMultimap.create();
    for (Measure measure : passage.measures()) {
      numbers.put(measure.index(), measure.number());
      indices.put(measure.number(), measure.index());
    }
    ImmutableList.Builder<OptionalInt> result = ImmutableList.builder();
    Map<String, Integer> occurrences = new HashMap<>();
    for (int i = 0; i < notes.size(); i++) {
      EarlierNote note = notes.get(i);
      if (i == 0 || inNewMeasure(notes.get(i - 1), note)) {
        occurrences.merge(note.measure(), 1, Integer::sum);
      }
      OptionalInt index = note.measureIndex();
      if (index.isPresent()) {
        String number = numbers.get(index.getAsInt());
        if (number == null || number.equals(note.measure())) {
          result.add(number == null ? OptionalInt.empty() : index);
          continue;
        }
      }
      List<Integer> sameNumber = indices.get(note.measure());
      int occurrence = Objects.requireNonNull(occurrences.get(note.measure()));
      result.add(
          occurrence > sameNumber.size()
              ? OptionalInt.empty()
              : OptionalInt.of(sameNumber.get(occurrence - 1)));
    }
    return result.build();
  }

  /** Whether a note is in another measure than the one before. */
  private static boolean inNewMeasure(EarlierNote before, EarlierNote note) {
    return !note.measure().equals(before.measure())
        || !note.measureIndex().equals(before.measureIndex())
        || note.onset().compareTo(before.onset()) < 0;
  }

  private String mismatch(List<UnmatchedNote> unmatched, ListMultimap<Onset, String> names) {
    int more = unmatched.size() - MAX_NAMED;
    return source
        + " is not a plan of this music: it has "
        + unmatched.stream()
            .limit(MAX_NAMED)
            .map(one -> describe(one.note(), names.get(one.onset())))
            .collect(Collectors.joining(", and "))
        + (more > 0 ? ", and " + more + " more " + (more == 1 ? "difference" : "differences") : "")
        + "; plan this music again, or keep only the measures that match.";
  }

  private static String describe(EarlierNote note, List<String> inScore) {
    return note.written().display()
        + " in measure "
        + note.measure()
        + ", onset "
        + note.onset().stripTrailingZeros().toPlainString()
        + ", where the score has "
        + (inScore.isEmpty() ? "no note" : String.join("+", inScore));
  }
}
