package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.music.Note;
import fingering.music.Place;
import fingering.musicxml.reading.PartInfo;
import java.util.Comparator;
import java.util.Optional;

/**
 * Something in a part that an arranger should look at.
 *
 * @param kind what it is
 * @param severity how much it weighs
 * @param part the part
 * @param place where it is; of a passage where it begins
 * @param to where the passage ends; equal to the place for a single spot
 * @param notes the notes it is about, lowest first where they sound together; of a passage those of
 *     its hardest spot; empty where it is about a word or a clef
 * @param reason what is wrong, one sentence
 * @param wayOut what could be written instead, one sentence; empty where nothing is proposed
 */
public record Finding(
    FindingKind kind,
    Severity severity,
    PartInfo part,
    Place place,
    Place to,
    ImmutableList<Note> notes,
    String reason,
    Optional<String> wayOut) {

  /** As a player reads the part: by place, at one place the gravest first. */
  public static final Comparator<Finding> IN_THE_PART =
      Comparator.<Finding>comparingInt(finding -> finding.place().measureIndex())
          .thenComparing(finding -> finding.place().onset())
          .thenComparing(Finding::severity)
          .thenComparing(Finding::kind);

  /** Whether it is about a passage and not a single spot. */
  public boolean passage() {
    return !place.equals(to);
  }

  /** As a player names the place: {@code m. 12, beat 2.5}, {@code m. 12–20}. */
  public String where() {
    return place.measureIndex() == to.measureIndex()
        ? "m. " + place.measure() + ", beat " + place.beatText()
        : "m. " + place.measure() + "–" + to.measure();
  }
}
