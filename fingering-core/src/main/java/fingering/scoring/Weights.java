package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.tables.FingeringException;
import fingering.userfile.KnownKeys;
import fingering.userfile.UserFields;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/**
 * The cost of one unit of each rule, in points. A YAML file lists them: {@code shift: 20}.
 *
 * @param points whole points, 0 or more, by rule id
 * @param habit the learned habit; {@link Habit#NONE} if there is none
 */
public record Weights(ImmutableMap<String, Long> points, Habit habit) {
  private static final String VIOLIN = "habit-violin";
  private static final String CELLO = "habit-cello";

  /** Weights without a habit. */
  public Weights(ImmutableMap<String, Long> points) {
    this(points, Habit.NONE);
  }

  private static final String WHAT = "a weights file";

  /** The names of the built-in weights; each is the name of a file. */
  private static final ImmutableList<String> PRESETS =
      ImmutableList.of("common-practice", "beginner", "intermediate", "advanced");

  /** The built-in weights for common practice. */
  public static Weights commonPractice() {
    return preset(PRESETS.get(0));
  }

  /** The names of the built-in weights, the default first. */
  public static ImmutableList<String> presets() {
    return PRESETS;
  }

  /**
   * The name of a preset as {@link #presets()} lists it. Case does not matter.
   *
   * @throws FingeringException if there is none of that name
   */
  public static String presetName(String typed) {
    return PRESETS.stream()
        .filter(typed.strip()::equalsIgnoreCase)
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "there are no weights '"
                        + typed
                        + "'; choose one of "
                        + String.join(", ", PRESETS)));
  }

  /**
   * Built-in weights.
   *
   * @param preset one of {@link #presets()}; case does not matter
   * @throws FingeringException if there are none of that name
   */
  public static Weights preset(String preset) {
    String name = "weights/" + presetName(preset) + ".yaml";
    try (InputStream in = Weights.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the library");
      }
      return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads the weights of some of these rules, see {@link #orElse}.
   *
   * @param name the name of the file, for messages
   * @throws FingeringException if the text cannot be read or names another rule; the message is one
   *     sentence with the line
   */
  public static Weights parse(String name, String text, ImmutableList<CostRule> rules) {
    return of(
        UserFields.parse(
            name,
            text,
            KnownKeys.of(
                WHAT,
                Stream.concat(rules.stream().map(CostRule::id), Stream.of(Habit.ID, VIOLIN, CELLO))
                    .map(Weights::example)
                    .toList())));
  }

  /**
   * Reads the weights of any rules.
   *
   * @param name the name of the file, for messages
   * @throws FingeringException if the text cannot be read; the message is one sentence with the
   *     line
   */
  public static Weights parse(String name, String text) {
    return of(UserFields.parse(name, text, KnownKeys.any(WHAT, example("shift"))));
  }

  private static String example(String rule) {
    return rule + ": 20";
  }

  private static Weights of(UserFields fields) {
    ImmutableMap.Builder<String, Long> points = ImmutableMap.builder();
    for (String rule : fields.keys()) {
      if (rule.equals(VIOLIN) || rule.equals(CELLO)) {
        continue;
      }
      points.put(rule, (long) fields.number(rule, 0, Scoring.MAX_WEIGHT).orElseThrow());
    }
    return new Weights(
        points.buildOrThrow(), new Habit(numbers(fields, VIOLIN), numbers(fields, CELLO)));
  }

  private static ImmutableDoubleArray numbers(UserFields fields, String key) {
    ImmutableDoubleArray numbers =
        ImmutableDoubleArray.copyOf(fields.list(key, Double::valueOf).orElse(ImmutableList.of()));
    if (!numbers.isEmpty() && numbers.length() != HabitNetwork.SIZE) {
      throw fields.refusal(
          "has " + numbers.length() + " numbers for " + key + "; there are " + HabitNetwork.SIZE);
    }
    return numbers;
  }

  /** These weights, completed from others for the rules that these do not name. */
  public Weights orElse(Weights others) {
    return new Weights(
        ImmutableMap.<String, Long>builder()
            .putAll(others.points)
            .putAll(points)
            .buildKeepingLast(),
        habit.idle() ? others.habit : habit);
  }

  /**
   * Points per unit of a rule.
   *
   * @throws IllegalArgumentException if the weights do not name the rule
   */
  public long of(CostRule rule) {
    Long value = points.get(rule.id());
    if (value == null) {
      throw new IllegalArgumentException("no weight is given for the rule '" + rule.id() + "'");
    }
    return value;
  }
}
