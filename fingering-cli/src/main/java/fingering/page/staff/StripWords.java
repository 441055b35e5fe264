package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.PrintedNote;
import fingering.page.staff.Lane.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A piece of the strip in words, for those who hear it read. */
final class StripWords {
  private StripWords() {}

  static String of(StripPiece span, ImmutableList<Lane> lanes) {
    StringBuilder words = new StringBuilder("Measure " + span.measure.number());
    if (!span.first) {
      words.append(", continued");
    }
    for (Column column : span.columns) {
      for (Stem stem : column.stems) {
        for (PrintedNote note : stem.notes) {
          words.append(note.rest() ? "; rest" : note(note, lanes));
        }
      }
    }
    return words.append('.').toString();
  }

  private static String note(PrintedNote note, ImmutableList<Lane> lanes) {
    List<String> told = new ArrayList<>();
    for (Lane lane : lanes) {
      Optional.ofNullable(lane.marks().get(note.address())).ifPresent(m -> told.add(mark(m)));
    }
    String marks =
        told.isEmpty()
            ? note.cue() ? " as a cue" : " held"
            : told.size() > 1 && told.stream().distinct().count() == 1
                ? ": " + (told.size() == 2 ? "both " : "all ") + told.get(0)
                : ": " + keyed(told, lanes);
    return "; " + note.pitch().orElseThrow().display() + marks;
  }

  /** The marks, each with the letter of its plan. */
  private static String keyed(List<String> told, ImmutableList<Lane> lanes) {
    return IntStream.range(0, told.size())
        .mapToObj(i -> lanes.get(i).key() + " " + told.get(i))
        .collect(Collectors.joining(", "));
  }

  private static String mark(Mark mark) {
    return (mark.stringTold() ? mark.string() + " " : "")
        + mark.finger()
        + mark.shift().map(way -> " shift to " + mark.position()).orElse("");
  }
}
