package fingering.search;

import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import java.util.List;
import java.util.stream.Collectors;

/** The visible part of a grip as text, as players write it above the notes. */
final class Seen {
  private Seen() {}

  static String of(Grip grip) {
    return grip.placements().stream().map(Seen::of).collect(Collectors.joining("+"));
  }

  private static String of(Placement placement) {
    return placement.open()
        ? "string %d open".formatted(placement.string())
        : "string %d finger %s in %s, first at %s"
            .formatted(
                placement.string(),
                placement.finger().symbol(),
                placement.frame().position(),
                placement.frame().first());
  }

  /** Only strings and positions, as a teacher compares fingerings. */
  static String places(Grip grip) {
    return grip.placements().stream()
        .map(
            placement ->
                placement.string()
                    + (placement.open() ? " open" : " in " + placement.frame().position()))
        .collect(Collectors.joining("+"));
  }

  static List<String> of(Path path) {
    return path.grips().stream().map(Seen::of).toList();
  }
}
