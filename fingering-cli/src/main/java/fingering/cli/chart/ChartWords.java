package fingering.cli.chart;

import com.google.common.collect.ImmutableList;
import fingering.cli.terminal.NumberRanges;
import fingering.cli.text.SummaryText;
import fingering.fingerboard.Chart;
import fingering.fingerboard.Chart.Cell;
import fingering.fingerboard.Chart.Fingering;
import fingering.fingerboard.Chart.HandPlace;
import fingering.fingerboard.Chart.KeyRelation;
import fingering.fingerboard.Finger;
import fingering.tables.Instrument;
import fingering.tables.Instrument.HandKind;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Tuning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The texts of a chart, both as text and as a picture. */
public final class ChartWords {
  /** The sign of a ringing note, before the open string that rings with it. */
  static final String RINGS = "°";

  private ChartWords() {}

  static String title(Chart chart) {
    String title =
        chart.instrument().name()
            + ", "
            + chart.hand().map(ChartWords::position).orElse("the whole fingerboard");
    String string =
        chart.strings().size() == 1 ? ", " + stringName(chart.strings().get(0)) + " string" : "";
    return title + string + chart.key().map(key -> ", " + key.display()).orElse("");
  }

  private static String position(HandPlace hand) {
    return hand.position().display()
        + " position"
        + (hand.remark().isEmpty() ? "" : ", " + hand.remark());
  }

  /** The name of a string: {@code IV C}. */
  static String stringName(OpenString string) {
    return string.roman() + " " + string.letterName();
  }

  /** Facts above the chart: the length of the string, and the place of the hand. */
  static ImmutableList<String> facts(Chart chart) {
    ImmutableList.Builder<String> facts = ImmutableList.builder();
    facts.add(
        "String length "
            + Math.round(chart.instrument().stringLength())
            + " mm, "
            + tuning(chart.instrument())
            + "equal temperament: a guide for the eye; trust your ear.");
    if (chart.instrument().kind() != HandKind.VIOLIN) {
      chart.hand().map(hand -> place(chart, hand)).ifPresent(facts::add);
    }
    chart.strings().stream()
        .filter(string -> !string.lowest().equals(string.pitch()))
        .forEach(
            string ->
                facts.add(
                    "String "
                        + stringName(string)
                        + " continues behind the nut, down to "
                        + string.lowest().display()
                        + "; that part is not drawn."));
    if (chart.instrument().writtenOctaves() != 0) {
      facts.add("Notes are named as they sound, an octave below the printed part.");
    }
    return facts.build();
  }

  private static String tuning(Instrument instrument) {
    return instrument.tuning().equals(Tuning.STANDARD)
        ? ""
        : "tuning '" + instrument.tuning() + "', ";
  }

  private static String place(Chart chart, HandPlace hand) {
    String place =
        (thumb(chart) ? "Thumb " : "First finger ")
            + semitones(hand.semitones())
            + " above the open string";
    return hand.others().isEmpty()
        ? place + "."
        : place
            + "; "
            + hand.position().display()
            + " position can also be at "
            + ranges(hand.others())
            + ".";
  }

  /** Hints on other options of the command. */
  static ImmutableList<String> hints(Chart chart) {
    ImmutableList.Builder<String> hints = ImmutableList.builder();
    chart
        .hand()
        .flatMap(hand -> hand.others().stream().findFirst())
        .ifPresent(
            other -> hints.add("For another place of this position, use --at " + other + "."));
    if (!fingersShown(chart) && thumb(chart)) {
      hints.add("For the fingers of thumb position, use --position thumb.");
    }
    return hints.build();
  }

  /** Ascending numbers as ranges: {@code 3, 5–8}. */
  private static String ranges(List<Integer> numbers) {
    return NumberRanges.of(numbers).stream()
        .map(
            range ->
                range.from() == range.to() ? "" + range.from() : range.from() + "–" + range.to())
        .collect(Collectors.joining(", "));
  }

  private static String semitones(int number) {
    return number + (number == 1 ? " semitone" : " semitones");
  }

  /**
   * The name of a note, or both its names if it has two; empty if it is not in the key.
   *
   * @param octave whether to add the octave number
   */
  public static String name(Cell cell, boolean octave) {
    if (cell.names().isEmpty()) {
      return "";
    }
    List<String> letters = new ArrayList<>();
    for (Pitch name : cell.names()) {
      letters.add(name.letterName());
    }
    String name = String.join("/", letters) + (octave ? cell.names().get(0).octave() : "");
    return cell.relation() == KeyRelation.RAISED ? "(" + name + ")" : name;
  }

  /** The fingers of a note in the hand position of the chart: {@code 3 x2}, {@code 2/3}. */
  static String fingers(Cell cell) {
    List<String> byName = new ArrayList<>();
    for (Pitch name : cell.names()) {
      String fingers =
          cell.fingerings().stream()
              .filter(fingering -> fingering.name().equals(name))
              .sorted(Comparator.comparing(Fingering::extended))
              .map(Fingering::symbol)
              .distinct()
              .collect(Collectors.joining(" "));
      if (!fingers.isEmpty() && !byName.contains(fingers)) {
        byName.add(fingers);
      }
    }
    return String.join("/", byName);
  }

  /** The interval between a note and an open string that rings with it. */
  static String interval(Cell cell, OpenString open) {
    int octaves = Math.abs(cell.midi() - open.pitch().midi()) / Pitch.OCTAVE;
    return switch (octaves) {
      case 0 -> "unison";
      case 1 -> "octave";
      default -> octaves + " octaves";
    };
  }

  static boolean any(Chart chart, Predicate<Cell> what) {
    return chart.rows().stream().flatMap(row -> row.cells().stream()).anyMatch(what);
  }

  /** How to use the chart. */
  static ImmutableList<String> advice(Chart chart) {
    ImmutableList.Builder<String> advice = ImmutableList.builder();
    if (any(chart, cell -> rings(cell))) {
      advice.add(
          "Tune every ringing note to the open string named beside it: when the note is in tune,"
              + " that string rings too.");
    }
    if (extended(chart) || (fingersShown(chart) && thumb(chart))) {
      advice.add(SummaryText.STRAIN);
    }
    return advice.build();
  }

  /** Whether the chart shows fingers: in one position, or on one string. */
  static boolean fingersShown(Chart chart) {
    return chart.hand().isPresent() || chart.strings().size() == 1;
  }

  /** Whether the chart shows an extended finger. */
  static boolean extended(Chart chart) {
    return chart.hand().isPresent() && hasFingering(chart, Fingering::extended);
  }

  private static boolean thumb(Chart chart) {
    return hasFingering(chart, fingering -> fingering.finger() == Finger.THUMB);
  }

  private static boolean hasFingering(Chart chart, Predicate<Fingering> what) {
    return any(chart, cell -> cell.fingerings().stream().anyMatch(what));
  }

  /** Whether the two names of a note have different fingers. */
  static boolean fingersDifferByName(Cell cell) {
    return fingers(cell).contains("/");
  }

  /** Whether the chart marks a note as ringing: it has a name, and an open string rings with it. */
  public static boolean rings(Cell cell) {
    return !cell.rings().isEmpty() && !cell.names().isEmpty();
  }
}
