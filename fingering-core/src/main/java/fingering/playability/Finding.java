package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.music.Note;
import fingering.music.Place;
import fingering.musicxml.reading.PartInfo;
import java.util.Comparator;
import java.util.Optional;

/**
 * A problem in a part that an arranger should look at.
 *
 * @param kind its kind
 * @param severity its severity
 * @param part the part
 * @param place its place, or the beginning of its passage
 * @param to the end of its passage; equal to the place for a single spot
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
    ImmutableList<Note> notes,
    String reason,
    Optional<String> suggestion) {

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

  /** Returns the place as a player says it: {@code m. 12, beat 2.5}, {@code m. 12–20}. */
  public String where() {
    return place.measureIndex() == to.measureIndex()
        ? "m. " + place.measure() + ", beat " + place.beatText()
        : "m. " + place.measure() + "–" + to.measure();
  }
}
