package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.PrintedNote;
import fingering.page.staff.Lane.Mark;
import java.util.Optional;
import java.util.stream.Collectors;

/** A piece of the strip in words, for those who hear it read. */
final class StripWords {
  private StripWords() {}

  static String of(Span span, ImmutableList<Lane> lanes) {
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
    String marks =
        lanes.stream()
            .flatMap(
                lane ->
                    Optional.ofNullable(lane.marks().get(note.address()))
                        .map(mark -> lane.key() + " " + mark(mark))
                        .stream())
            .collect(Collectors.joining(", "));
    return "; "
        + note.pitch().orElseThrow().display()
        + (note.cue() ? " as a cue" : marks.isEmpty() ? " held" : ": " + marks);
  }

  private static String mark(Mark mark) {
    return mark.string()
        + " "
        + mark.finger()
        + (mark.shift().isPresent() ? " shift to " + mark.position() : "");
  }
}
