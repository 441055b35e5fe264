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

/** Every way to take one note: the positions, and the fingers in each. */
final class NoteFingerings {
  private static final String UNBROKEN = "\u00a0";

  /** Positions from the nut up, then thumb position, its fingers as they lie: T 1 2 3. */
  private static final Comparator<Fingering> THUMB_LAST =
      Comparator.<Fingering>comparingInt(
          fingering -> thumb(fingering) ? 1 + fingering.finger().number() : 0);

  private final Chart chart;

  private NoteFingerings(Chart chart) {
    this.chart = chart;
  }

  /**
   * The ways to take a note, such as {@code 1st 4, 2nd 3}; told apart by the name of the note where
   * that decides the finger; empty where the hand takes it nowhere.
   */
  static String of(Chart chart, Cell note) {
    return note.semitones() == 0 ? "open" : new NoteFingerings(chart).byName(note);
  }

  private String byName(Cell note) {
    Map<String, String> byName = new LinkedHashMap<>();
    for (Pitch name : note.names()) {
      String ways = ways(note.fingerings().stream().filter(t -> t.name().equals(name)).toList());
      byName.put(name.display(), ways);
    }
    if (byName.values().stream().distinct().count() == 1) {
      return byName.values().iterator().next();
    }
    return byName.entrySet().stream()
        .filter(entry -> !entry.getValue().isEmpty())
        .map(entry -> entry.getKey() + ": " + entry.getValue())
        .collect(Collectors.joining("; "));
  }

  private String ways(List<Fingering> fingerings) {
    Map<List<Object>, List<Fingering>> byPlace =
        fingerings.stream()
            .sorted(THUMB_LAST)
            // Without a position there are many ways at rest; what can be reached beside is noise.
            .filter(fingering -> chart.hand().isPresent() || !fingering.extended())
            .collect(
                Collectors.groupingBy(
                    fingering -> place(fingering.frame()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return byPlace.values().stream()
        .map(NoteFingerings::way)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** What sets a hand apart for a player: thumb position is one, wherever the thumb lies. */
  private static List<Object> place(Frame frame) {
    return List.of(frame.position(), thumb(frame) ? 0.0 : frame.first());
  }

  private static boolean thumb(Fingering fingering) {
    return thumb(fingering.frame());
  }

  private static boolean thumb(Frame frame) {
    return frame.position().equals(Position.THUMB);
  }

  /** A position and its fingers; a space that does not break keeps them on one line. */
  private static String way(List<Fingering> fingerings) {
    return fingerings.get(0).frame().display().replace(" ", UNBROKEN)
        + UNBROKEN
        + fingerings.stream()
            .map(Fingering::symbol)
            .distinct()
            .collect(Collectors.joining(UNBROKEN));
  }
}
