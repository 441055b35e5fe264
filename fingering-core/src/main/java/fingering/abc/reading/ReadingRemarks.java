package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.Decoration;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Collects remarks on assumptions and omissions in reading a tune. */
final class ReadingRemarks {
  private final Set<String> signs = new TreeSet<>();
  private final Map<Integer, Pitch> otherOctaves = new LinkedHashMap<>();
  private boolean chordSymbols;
  private boolean lyrics;

  /** Adds a decoration that MusicXML cannot express. */
  void leftOut(Decoration sign) {
    signs.add("!" + sign.name() + "!");
  }

  /** Records that a chord symbol was left out. */
  void chordSymbol() {
    chordSymbols = true;
  }

  /** Records that lyrics were left out. */
  void lyrics() {
    lyrics = true;
  }

  /**
   * Adds a note whose accidental comes only from another octave.
   *
   * @param measure index of the measure
   */
  void fromAnotherOctave(int measure, Pitch pitch) {
    otherOctaves.putIfAbsent(measure, pitch);
  }

  /**
   * Returns the remarks.
   *
   * @param numbers the printed numbers of the measures
   */
  ImmutableList<String> sentences(List<String> numbers) {
    ImmutableList.Builder<String> all = ImmutableList.builder();
    if (!otherOctaves.isEmpty()) {
      all.add(
          "in ABC an accidental applies to all octaves up to the bar line, which makes %s; the line '%%%%propagate-accidentals octave' limits it to its own octave"
              .formatted(
                  otherOctaves.entrySet().stream()
                      .map(
                          e ->
                              "%s in measure %s"
                                  .formatted(e.getValue().display(), numbers.get(e.getKey())))
                      .collect(Collectors.joining(", "))));
    }
    List<String> leftOut = new ArrayList<>();
    if (!signs.isEmpty()) {
      leftOut.add(
          (signs.size() == 1 ? "the decoration " : "the decorations ") + String.join(", ", signs));
    }
    if (chordSymbols) {
      leftOut.add("chord symbols");
    }
    if (lyrics) {
      leftOut.add("lyrics");
    }
    if (!leftOut.isEmpty()) {
      all.add("left out: " + String.join("; ", leftOut));
    }
    return all.build();
  }
}
