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

/** Collects what was assumed or left out in reading a tune. */
final class ReadingRemarks {
  private final Set<String> signs = new TreeSet<>();
  private final Map<Integer, Pitch> otherOctaves = new LinkedHashMap<>();
  private boolean chordSymbols;
  private boolean words;

  /** A sign has no place in the score. */
  void leftOut(Decoration sign) {
    signs.add("!" + sign.name() + "!");
  }

  /** A chord symbol has no place in a string part. */
  void chordSymbol() {
    chordSymbols = true;
  }

  /** Words to be sung have no place in a string part. */
  void words() {
    words = true;
  }

  /** In a measure, an accidental of another octave makes a note what it is. */
  void fromAnotherOctave(int measure, Pitch pitch) {
    otherOctaves.putIfAbsent(measure, pitch);
  }

  /** Sentences; the numbers are those of the measures in print. */
  ImmutableList<String> sentences(List<String> numbers) {
    ImmutableList.Builder<String> all = ImmutableList.builder();
    if (!otherOctaves.isEmpty()) {
      all.add(
          "in ABC an accidental holds in all octaves to the bar line, which makes %s; the line '%%%%propagate-accidentals octave' reads otherwise"
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
      leftOut.add((signs.size() == 1 ? "the sign " : "the signs ") + String.join(", ", signs));
    }
    if (chordSymbols) {
      leftOut.add("chord symbols");
    }
    if (words) {
      leftOut.add("words to be sung");
    }
    if (!leftOut.isEmpty()) {
      all.add("left out: " + String.join("; ", leftOut));
    }
    return all.build();
  }
}
