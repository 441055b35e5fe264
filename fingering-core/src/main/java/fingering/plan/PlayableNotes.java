package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.GripFinder;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.tables.Instrument;
import fingering.tables.Tuning;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The notes of a passage that the instrument has. A teacher would say: your instrument does not
 * have this B; ask about it, and finger the rest.
 */
final class PlayableNotes {
  /** The most notes that a remark names. */
  private static final int MAX_NAMED = 3;

  private final Passage passage;
  private final GripFinder finder;
  private final List<Moment> moments = new ArrayList<>();
  private final List<Note> left = new ArrayList<>();

  private PlayableNotes(Passage passage, GripFinder finder) {
    this.passage = passage;
    this.finder = finder;
  }

  /**
   * The passage without notes that the instrument does not have, with a remark on them.
   *
   * @throws InfeasibleBriefException if it has none of them
   */
  static Passage of(Passage passage, GripFinder finder) {
    return new PlayableNotes(passage, finder).passage();
  }

  private Passage passage() {
    long silentFrom = 0;
    boolean gap = false;
    for (Moment moment : passage.moments()) {
      ImmutableList<Note> starting = playable(moment.starting());
      ImmutableList<Note> held = playable(moment.held());
      moment.starting().stream().filter(note -> !starting.contains(note)).forEach(left::add);
      if (starting.isEmpty()) {
        gap = true;
        continue;
      }
      boolean whole = starting.equals(moment.starting()) && held.equals(moment.held());
      Moment kept = whole ? moment : moment.withNotes(starting, held);
      moments.add(gap ? afterGap(kept, silentFrom) : kept);
      silentFrom = Math.max(silentFrom, moment.startMicros() + moment.soundMicros());
      gap = false;
    }
    if (left.isEmpty()) {
      return passage;
    }
    if (moments.isEmpty()) {
      throw InfeasibilityDiagnosis.outOfRange(passage, passage.moments().get(0));
    }
    return passage.leaving(Moment.withSurroundings(moments), ImmutableList.copyOf(left), remark());
  }

  private ImmutableList<Note> playable(ImmutableList<Note> notes) {
    for (Note note : notes) {
      if (!finder.reaches(note)) {
        return notes.stream().filter(finder::reaches).collect(ImmutableList.toImmutableList());
      }
    }
    return notes;
  }

  /** The moment with the time of the notes before it that are left out as its rest. */
  private Moment afterGap(Moment moment, long silentFrom) {
    long rest = moments.isEmpty() ? 0 : Math.max(0, moment.startMicros() - silentFrom);
    return moment.withTimes(moment.startMicros(), moment.soundMicros(), rest);
  }

  private String remark() {
    Instrument instrument = passage.instrument();
    List<Note> low =
        left.stream().filter(note -> note.midi() < instrument.lowest().midi()).toList();
    List<Note> high =
        left.stream().filter(note -> note.midi() >= instrument.lowest().midi()).toList();
    String tuned =
        instrument.tuning().equals(Tuning.STANDARD) ? "" : ", tuning '" + instrument.tuning() + "'";
    List<String> clauses = new ArrayList<>();
    if (!low.isEmpty()) {
      clauses.add(
          clause(low)
              + "below the lowest string of the "
              + instrument.nameInSentence()
              + " ("
              + InfeasibilityDiagnosis.lowest(instrument)
              + tuned
              + ")");
    }
    if (!high.isEmpty()) {
      clauses.add(
          clause(high)
              + "beyond the fingerboard of the "
              + instrument.nameInSentence()
              + (tuned.isEmpty() ? "" : " (" + tuned.substring(2) + ")"));
    }
    return String.join(", and ", clauses)
        + (left.size() == 1 ? "; it is" : "; they are")
        + " left without a finger: check the notes, "
        + (tuned.isEmpty() ? "" : "the tuning, ")
        + "the instrument or the transposition";
  }

  private static String clause(List<Note> notes) {
    int more = notes.size() - MAX_NAMED;
    return notes.stream()
            .limit(MAX_NAMED)
            .map(note -> note.written().display() + " in " + note.place())
            .collect(Collectors.joining("; "))
        + (more > 0 ? "; and " + more + " more" : "")
        + (notes.size() == 1 ? " is " : " are ");
  }
}
