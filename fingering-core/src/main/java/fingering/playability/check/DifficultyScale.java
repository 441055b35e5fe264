package fingering.playability.check;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.playability.Difficulty;
import fingering.playability.Difficulty.Component;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLine;
import fingering.tables.Position;
import fingering.tables.Table;
import fingering.tempo.MeasureLimits;
import fingering.tempo.PlayerSpeed;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

/** Grades a part by the components in {@code difficulty.table}. */
final class DifficultyScale {
  private static final String NAME = "difficulty.table";
  private static final int FIELDS = 6;
  private static final double MICROS = 1e6;
  private static final double LIMIT = 10;

  /** The quantile of the pace of all notes that is graded: the fastest tenth of the part. */
  private static final double PACE_QUANTILE = 0.9;

  /** The level whose comfortable tempo is graded, for all levels of the check. */
  private static final String PLAYERS = "intermediate";

  private final Table table = Table.load(DifficultyScale.class, NAME, FIELDS);
  private final PlayerSpeed players = PlayerSpeed.named(PLAYERS);

  /** Returns the difficulty of a part. */
  Difficulty of(PartMusic music) {
    if (music.lines().isEmpty()) {
      return new Difficulty(ImmutableList.of());
    }
    // The upper line also has all undivided notes.
    Plan plan = music.lines().get(0).plan();
    int measures =
        (int)
            plan.passage().moments().stream()
                .mapToInt(moment -> moment.place().measureIndex())
                .distinct()
                .count();
    return new Difficulty(
        Stream.of(
                position(music),
                per(plan, "shifts", shifts(plan), measures, "a measure"),
                per(plan, "crossings", crossings(plan), measures, "a measure"),
                pace(plan),
                share(music, "double-stops", doubleStops(plan), plan.grips().size()),
                share(music, "above-tempo", above(music.lines().get(0).limits()), measures),
                accidentals(music))
            .sorted(Comparator.comparingDouble(Component::grade).reversed())
            .collect(ImmutableList.toImmutableList()));
  }

  private static int shifts(Plan plan) {
    return (int) plan.notes().stream().filter(PlannedNote::shift).count();
  }

  private static int crossings(Plan plan) {
    return (int) plan.notes().stream().filter(note -> note.crossing() > 1).count();
  }

  private static int doubleStops(Plan plan) {
    int count = 0;
    for (Grip grip : plan.grips()) {
      count += grip.placements().stream().filter(Placement::stopped).count() > 1 ? 1 : 0;
    }
    return count;
  }

  /** Returns the number of measures above the comfortable tempo of {@link #PLAYERS}. */
  private int above(MeasureLimits limits) {
    return limits.countBelow((double) players.actionPercent() / limits.level().actionPercent());
  }

  private Component position(PartMusic music) {
    Position highest = Position.HALF;
    for (PlayerLine line : music.lines()) {
      Position ofLine = line.plan().highestPosition().orElse(Position.HALF);
      highest = ofLine.compareTo(highest) > 0 ? ofLine : highest;
    }
    Position reached = highest;
    // Thumb position counts as 8th, above the highest neck position.
    double number = highest.halves().isPresent() ? highest.halves().getAsInt() / 2.0 : 8;
    return component("highest-position", number, amount -> reached.display() + " position");
  }

  private Component per(Plan plan, String id, int count, int measures, String what) {
    double each = plan.notes().isEmpty() ? 0 : (double) count / Math.max(1, measures);
    return component(id, each, amount -> decimals(amount) + " " + what);
  }

  private Component share(PartMusic music, String id, int count, int of) {
    double percent = music.lines().isEmpty() ? 0 : 100.0 * count / Math.max(1, of);
    return component(id, percent, amount -> decimals(amount) + " %");
  }

  private Component pace(Plan plan) {
    double[] quick =
        plan.passage().moments().stream()
            .filter(moment -> !moment.grace())
            .mapToDouble(moment -> MICROS / Math.max(1, moment.surroundings().paceMicros()))
            .sorted()
            .toArray();
    double pace = quick.length == 0 ? 0 : quick[(int) (PACE_QUANTILE * (quick.length - 1))];
    return component("pace", pace, amount -> decimals(amount) + " notes a second");
  }

  private Component accidentals(PartMusic music) {
    int[] fifths =
        music.passage().measures().stream()
            .mapToInt(measure -> Math.abs(measure.fifths()))
            .sorted()
            .toArray();
    int most = fifths.length == 0 ? 0 : fifths[fifths.length / 2];
    return component(
        "key",
        most,
        amount ->
            most == 0
                ? "no sharps or flats"
                : (most == 1 ? "1 sharp or flat" : most + " sharps or flats"));
  }

  /** Returns a graded component; amounts between two grades are interpolated. */
  private Component component(String id, double amount, DoubleFunction<String> amountText) {
    Table.Row row =
        table.rows().stream()
            .filter(one -> one.text(0).equals(id))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException(NAME + " has no row '" + id + "'"));
    double[] steps =
        Arrays.stream(row.text(3).split(" ")).mapToDouble(Double::parseDouble).toArray();
    double grade = 1;
    for (int i = 1; i < steps.length && amount > steps[i - 1]; i++) {
      double part = Math.min(1, (amount - steps[i - 1]) / (steps[i] - steps[i - 1]));
      grade = i + part;
    }
    return new Component(
        id, row.text(1), row.text(2), amountText.apply(amount), Math.min(LIMIT, grade));
  }

  private static String decimals(double amount) {
    return String.format(Locale.ROOT, "%.1f", amount);
  }
}
