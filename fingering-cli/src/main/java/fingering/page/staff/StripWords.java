package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedNote;
import fingering.page.staff.Lane.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A piece of the strip in words, for screen readers. */
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
    List<String> marks = new ArrayList<>();
    for (Lane lane : lanes) {
      Optional.ofNullable(lane.marks().get(note.address())).ifPresent(m -> marks.add(mark(m)));
    }
    String text =
        marks.isEmpty()
            ? note.cue() ? " as a cue" : " held"
            : marks.size() > 1 && marks.stream().distinct().count() == 1
                ? ": " + (marks.size() == 2 ? "both " : "all ") + marks.get(0)
                : ": " + keyed(marks, lanes);
    return "; " + note.pitch().orElseThrow().display() + text;
  }

  /** The marks, each with the letter of its plan. */
  private static String keyed(List<String> marks, ImmutableList<Lane> lanes) {
    return IntStream.range(0, marks.size())
        .mapToObj(i -> lanes.get(i).key() + " " + marks.get(i))
        .collect(Collectors.joining(", "));
  }

  private static String mark(Mark mark) {
    return (mark.showString() ? mark.string() + " " : "")
        + mark.finger()
        + mark.shift().map(direction -> " shift to " + mark.position()).orElse("");
  }
}
