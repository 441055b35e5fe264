package fingering.music;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The bowings that a teacher changes in a part: new slurs, and notes that are no longer slurred. A
 * new slur replaces the printed slurs with which it shares a note.
 *
 * @param changes the changes, each at another note
 */
public record SlurChanges(ImmutableList<Change> changes) {
  /** The slurs as printed. */
  public static final SlurChanges NONE = new SlurChanges(ImmutableList.of());

  /** The word for no slur, in place of the last note of one. */
  private static final String OFF = "none";

  /**
   * A change.
   *
   * @param from the first note of a new slur, or a note whose printed slurs are removed
   * @param to the last note of the new slur; empty to remove printed slurs
   */
  public record Change(MeasureBeat from, Optional<MeasureBeat> to) {
    /**
     * Checks the order of the notes, as far as the measure numbers show it.
     *
     * @throws FingeringException if the slur does not end after it begins
     */
    public Change {
      if (to.isPresent() && !ordered(from, to.get())) {
        throw backwards(from, to.get());
      }
    }

    /**
     * Reads a change.
     *
     * @param from measure and beat: {@code 29.1}
     * @param to measure and beat of the last note; {@code none} to remove slurs
     * @throws FingeringException if a text is not of that form, or the slur does not end after it
     *     begins
     */
    public static Change parse(String from, String to) {
      return new Change(
          MeasureBeat.parse(from),
          to.strip().equalsIgnoreCase(OFF) ? Optional.empty() : Optional.of(MeasureBeat.parse(to)));
    }

    /** The measure and beat of the last note, or {@code none}. */
    public String end() {
      return to.map(MeasureBeat::toString).orElse(OFF);
    }

    private static boolean ordered(MeasureBeat from, MeasureBeat to) {
      if (from.measure().equals(to.measure())) {
        return from.beat().compareTo(to.beat()) < 0;
      }
      return from.number() < 0 || to.number() < 0 || from.number() < to.number();
    }

    /** The exception for a slur that does not end after it begins. */
    public static FingeringException backwards(MeasureBeat from, MeasureBeat to) {
      return new FingeringException(
          "the slur from %s to %s does not end after it begins; write the first note, then the last one, such as 29.1: 30.2"
              .formatted(from, to));
    }
  }

  /**
   * Checks the changes.
   *
   * @throws FingeringException if two of them are at one note
   */
  public SlurChanges {
    Set<MeasureBeat> notes = new HashSet<>();
    for (Change change : changes) {
      if (!notes.add(change.from())) {
        throw new FingeringException(
            "there are two slurs at %s; leave one of them out".formatted(change.from()));
      }
    }
  }

  /** Whether all slurs are as printed. */
  public boolean isEmpty() {
    return changes.isEmpty();
  }

  /** A copy with one more change, which replaces the one at the same note. */
  public SlurChanges with(Change change) {
    return new SlurChanges(
        Stream.concat(without(change.from()).changes.stream(), Stream.of(change))
            .collect(ImmutableList.toImmutableList()));
  }

  /** A copy without the change at a note. */
  public SlurChanges without(MeasureBeat from) {
    return new SlurChanges(
        changes.stream()
            .filter(change -> !change.from().equals(from))
            .collect(ImmutableList.toImmutableList()));
  }
}
