package fingering.cli.chart;

import com.google.common.collect.ImmutableList;
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
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What a chart says in words, whichever way it is drawn. */
public final class ChartWords {
  /** Marks a ringing note: a string sounding open. */
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

  /** The string as players name it: {@code IV C}. */
  static String stringName(OpenString string) {
    return string.roman() + " " + string.letterName();
  }

  /** What a reader must know before looking: the string's length, and where the hand lies. */
  static ImmutableList<String> facts(Chart chart) {
    ImmutableList.Builder<String> facts = ImmutableList.builder();
    facts.add(
        "String of "
            + Math.round(chart.instrument().stringLength())
            + " mm, "
            + tuning(chart.instrument())
            + "equal temperament: a guide for the eye, the ear decides.");
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
                        + " goes on behind the nut, down to "
                        + string.lowest().display()
                        + ", which is not drawn."));
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
    String lies =
        (thumb(chart) ? "Thumb " : "First finger ")
            + semitones(hand.semitones())
            + " above the open string";
    return hand.others().isEmpty()
        ? lies + "."
        : lies
            + "; "
            + hand.position().display()
            + " position also lies at "
            + spans(hand.others())
            + ".";
  }

  /** What else to ask the program for. */
  static ImmutableList<String> hints(Chart chart) {
    ImmutableList.Builder<String> hints = ImmutableList.builder();
    chart
        .hand()
        .flatMap(hand -> hand.others().stream().findFirst())
        .ifPresent(
            other -> hints.add("For another place of the position give --at " + other + "."));
    if (!fingersShown(chart) && thumb(chart)) {
      hints.add("For the fingers of thumb position give --position thumb.");
    }
    return hints.build();
  }

  /** Whole numbers in order, neighbours drawn together: {@code 3, 5–8}. */
  private static String spans(List<Integer> numbers) {
    List<String> spans = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= numbers.size(); i++) {
      if (i == numbers.size() || numbers.get(i) != numbers.get(i - 1) + 1) {
        String last = i - from > 1 ? "–" + numbers.get(i - 1) : "";
        spans.add(numbers.get(from) + last);
        from = i;
      }
    }
    return String.join(", ", spans);
  }

  private static String semitones(int number) {
    return number + (number == 1 ? " semitone" : " semitones");
  }

  /** The name of a note, of a note between two natural ones both; empty outside the key. */
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

  /** The fingers that take a note in the hand that is shown: {@code 3 x2}, {@code 2/3}. */
  static String fingers(Cell cell) {
    List<String> byName = new ArrayList<>();
    for (Pitch name : cell.names()) {
      String fingers =
          cell.fingerings().stream()
              .filter(fingering -> fingering.name().equals(name))
              .sorted(java.util.Comparator.comparing(Fingering::extended))
              .map(Fingering::symbol)
              .distinct()
              .collect(Collectors.joining(" "));
      if (!fingers.isEmpty() && !byName.contains(fingers)) {
        byName.add(fingers);
      }
    }
    return String.join("/", byName);
  }

  /** How far an open string lies from a note, as a player hears it. */
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
          "Tune every ringing note against the open string named beside it: in place, it sets that"
              + " string ringing.");
    }
    if (extended(chart) || (fingersShown(chart) && thumb(chart))) {
      advice.add(
          "Stretching and long practice can hurt: stop on pain, rest, and ask your teacher or a"
              + " clinician.");
    }
    return advice.build();
  }

  /** Whether fingers stand beside the notes: in a position, or where there is room for them. */
  static boolean fingersShown(Chart chart) {
    return chart.hand().isPresent() || chart.strings().size() == 1;
  }

  /** Whether a finger is shown that reaches out of the hand. */
  static boolean extended(Chart chart) {
    return chart.hand().isPresent() && takes(chart, Fingering::extended);
  }

  private static boolean thumb(Chart chart) {
    return takes(chart, fingering -> fingering.finger() == Finger.THUMB);
  }

  private static boolean takes(Chart chart, Predicate<Fingering> what) {
    return any(chart, cell -> cell.fingerings().stream().anyMatch(what));
  }

  /** Whether the two names of a note are taken by different fingers. */
  static boolean eachNameItsFinger(Cell cell) {
    return fingers(cell).contains("/");
  }

  /** Whether a chart marks the note as ringing: it bears a name, and an open string answers. */
  public static boolean rings(Cell cell) {
    return !cell.rings().isEmpty() && !cell.names().isEmpty();
  }
}
