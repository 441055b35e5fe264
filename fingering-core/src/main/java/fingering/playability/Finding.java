package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.music.Note;
import fingering.music.Place;
import fingering.musicxml.reading.PartInfo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A problem in a part that an arranger should look at.
 *
 * @param kind its kind
 * @param severity its severity
 * @param part the part
 * @param place its place, or the beginning of its passage
 * @param to the end of its passage; equal to the place for a single spot
 * @param places its first place in each measure that has it, in the order of the part
 * @param notes its notes, lowest first if they sound together; in a passage, those of the hardest
 *     spot; empty for a word or a clef
 * @param reason what is wrong, in one sentence
 * @param suggestion how to fix it, in one sentence; empty if nothing is proposed
 */
public record Finding(
    FindingKind kind,
    Severity severity,
    PartInfo part,
    Place place,
    Place to,
    ImmutableList<Place> places,
    ImmutableList<Note> notes,
    String reason,
    Optional<String> suggestion) {

  /** A passage with gaps is listed as a whole if it has more groups of measures than this. */
  private static final int MOST_GROUPS = 6;

  /** Orders findings by place, then the most severe first. */
  public static final Comparator<Finding> BY_PLACE =
      Comparator.<Finding>comparingInt(finding -> finding.place().measureIndex())
          .thenComparing(finding -> finding.place().onset())
          .thenComparing(Finding::severity)
          .thenComparing(Finding::kind);

  /** Returns whether the finding is about a passage and not a single spot. */
  public boolean passage() {
    return !place.equals(to);
  }

  /** Returns the place as a player says it: {@code m. 12, beat 2.5}, {@code m. 12–14, 20}. */
  public String where() {
    return place.measureIndex() == to.measureIndex()
        ? "m. " + place.measure() + ", beat " + place.beatText()
        : "m. " + measures();
  }

  /**
   * Returns the measures that have the problem: {@code 12}, {@code 12–14, 20}; from the first to
   * the last if they are scattered.
   */
  public String measures() {
    List<String> groups = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= places.size(); i++) {
      boolean ends =
          i == places.size() || places.get(i).measureIndex() > places.get(i - 1).measureIndex() + 1;
      if (ends) {
        groups.add(places.get(first).measuresTo(places.get(i - 1)));
        first = i;
      }
    }
    return groups.size() <= MOST_GROUPS ? String.join(", ", groups) : place.measuresTo(to);
  }
}
