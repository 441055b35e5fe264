package fingering.cli.chart;

import fingering.fingerboard.Chart;
import fingering.fingerboard.Chart.Cell;
import fingering.fingerboard.Chart.Fingering;
import fingering.fingerboard.Frame;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** All fingerings of one note: the positions, and the fingers in each. */
final class NoteFingerings {
  private static final String NO_BREAK = "\u00a0";

  /** Positions from the nut up, then thumb position with its fingers in order: T 1 2 3. */
  private static final Comparator<Fingering> THUMB_LAST =
      Comparator.<Fingering>comparingInt(
          fingering -> thumb(fingering) ? 1 + fingering.finger().number() : 0);

  private final Chart chart;

  private NoteFingerings(Chart chart) {
    this.chart = chart;
  }

  /**
   * Returns the fingerings of a note, such as {@code 1st 4, 2nd 3}. Names of the note are listed
   * separately if their fingers differ. Empty if there are none.
   */
  static String of(Chart chart, Cell note) {
    return note.semitones() == 0 ? "open" : new NoteFingerings(chart).byName(note);
  }

  private String byName(Cell note) {
    Map<String, String> byName = new LinkedHashMap<>();
    for (Pitch name : note.names()) {
      String text =
          inPositions(
              note.fingerings().stream()
                  .filter(fingering -> fingering.name().equals(name))
                  .toList());
      byName.put(name.display(), text);
    }
    if (byName.values().stream().distinct().count() == 1) {
      return byName.values().iterator().next();
    }
    return byName.entrySet().stream()
        .filter(entry -> !entry.getValue().isEmpty())
        .map(entry -> entry.getKey() + ": " + entry.getValue())
        .collect(Collectors.joining("; "));
  }

  private String inPositions(List<Fingering> fingerings) {
    Map<List<Object>, List<Fingering>> byPlace =
        fingerings.stream()
            .sorted(THUMB_LAST)
            // Without a position there are many fingerings already; extensions would be noise.
            .filter(fingering -> chart.hand().isPresent() || !fingering.extended())
            .collect(
                Collectors.groupingBy(
                    fingering -> place(fingering.frame()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return byPlace.values().stream()
        .map(NoteFingerings::inPosition)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** The hand position as players distinguish it: thumb position is one, at any place. */
  private static List<Object> place(Frame frame) {
    return List.of(frame.position(), thumb(frame) ? 0.0 : frame.first());
  }

  private static boolean thumb(Fingering fingering) {
    return thumb(fingering.frame());
  }

  private static boolean thumb(Frame frame) {
    return frame.position().equals(Position.THUMB);
  }

  /** A position and its fingers, with no-break spaces that keep them on one line. */
  private static String inPosition(List<Fingering> fingerings) {
    return fingerings.get(0).frame().display().replace(" ", NO_BREAK)
        + NO_BREAK
        + fingerings.stream()
            .map(Fingering::symbol)
            .distinct()
            .collect(Collectors.joining(NO_BREAK));
  }
}
