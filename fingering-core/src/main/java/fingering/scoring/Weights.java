package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import com.google.common.primitives.Doubles;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.tables.FingeringException;
import fingering.tables.Instrument.HandKind;
import fingering.tables.NearWord;
import fingering.userfile.KnownKeys;
import fingering.userfile.UserFields;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The cost of one unit of each rule, in points. A YAML file lists them: {@code shift: 20}. A rule
 * may cost one kind of hand something else: {@code cello.shift: 15}. The hand of the violin is also
 * that of the viola. A habit whose points are not given costs one point per unit.
 *
 * @param points whole points, 0 to {@value Scoring#MAX_WEIGHT}, by rule id
 * @param habit the learned habit; {@link Habit#NONE} if there is none
 */
public record Weights(ImmutableMap<String, Long> points, Habit habit) {
  private static final String NETWORK = "habit-network";

  /** The keys of the networks of all kinds of hand. */
  private static final ImmutableSet<String> NETWORKS =
      Arrays.stream(HandKind.values())
          .map(Weights::networkKey)
          .collect(ImmutableSet.toImmutableSet());

  /**
   * Checks the points.
   *
   * @throws IllegalArgumentException if the points of a rule are not 0 to {@value
   *     Scoring#MAX_WEIGHT}
   */
  public Weights {
    points.forEach(
        (rule, value) -> {
          if (value < 0 || value > Scoring.MAX_WEIGHT) {
            throw new IllegalArgumentException(
                "the weight of the rule '%s' is %d, not 0 to %d"
                    .formatted(rule, value, Scoring.MAX_WEIGHT));
          }
        });
  }

  /**
   * Weights without a habit.
   *
   * @throws IllegalArgumentException if the points of a rule are not 0 to {@value
   *     Scoring#MAX_WEIGHT}
   */
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
                    "there are no weights '%s'; %s"
                        .formatted(typed, NearWord.advice(typed, PRESETS))));
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
    return read(
        UserFields.parse(
            name, text, KnownKeys.of(WHAT, keys(rules).map(Weights::example).toList())));
  }

  /**
   * Reads the weights of any rules.
   *
   * @param name the name of the file, for messages
   * @throws FingeringException if the text cannot be read; the message is one sentence with the
   *     line
   */
  public static Weights parse(String name, String text) {
    return read(UserFields.parse(name, text, KnownKeys.any(WHAT, example("shift"))));
  }

  private static Stream<String> keys(ImmutableList<CostRule> rules) {
    ImmutableList<String> ids =
        Stream.concat(rules.stream().map(CostRule::id), Stream.of(Habit.ID))
            .collect(ImmutableList.toImmutableList());
    return Stream.of(
            ids.stream(),
            Arrays.stream(HandKind.values()).flatMap(hand -> ids.stream().map(id -> key(hand, id))),
            NETWORKS.stream())
        .flatMap(all -> all);
  }

  private static String example(String rule) {
    return NETWORKS.contains(rule) ? rule + ": [-0.25, 1.5]" : rule + ": 20";
  }

  private static Weights read(UserFields fields) {
    Map<String, Long> points = new LinkedHashMap<>();
    ImmutableMap.Builder<HandKind, ImmutableDoubleArray> networks = ImmutableMap.builder();
    for (HandKind hand : HandKind.values()) {
      if (fields.has(networkKey(hand))) {
        networks.put(hand, numbers(fields, networkKey(hand)));
      }
    }
    for (String rule : Sets.difference(fields.keys(), NETWORKS)) {
      points.put(rule, (long) fields.number(rule, 0, Scoring.MAX_WEIGHT).orElseThrow());
    }
    Habit habit = new Habit(networks.buildOrThrow());
    if (!habit.idle()) {
      points.putIfAbsent(Habit.ID, 1L);
    }
    return new Weights(ImmutableMap.copyOf(points), habit);
  }

  private static ImmutableDoubleArray numbers(UserFields fields, String key) {
    ImmutableDoubleArray numbers =
        ImmutableDoubleArray.copyOf(fields.list(key, Weights::number).orElseThrow());
    if (numbers.length() != HabitNetwork.SIZE) {
      throw fields
          .place(key)
          .refusal(
              "'%s' has %d numbers; a network has %d"
                  .formatted(key, numbers.length(), HabitNetwork.SIZE));
    }
    return numbers;
  }

  private static double number(String text) {
    Double number = Doubles.tryParse(text);
    if (number == null || !Double.isFinite(number)) {
      throw new FingeringException("'" + text + "' is not a number, such as -0.25");
    }
    return number;
  }

  /**
   * These weights, completed from others for the rules that these do not name. Points for all hands
   * replace those of the others for one hand too.
   */
  public Weights orElse(Weights others) {
    Map<String, Long> all = new LinkedHashMap<>(others.points);
    for (String rule : points.keySet()) {
      for (HandKind hand : HandKind.values()) {
        all.remove(key(hand, rule));
      }
    }
    all.putAll(points);
    return new Weights(ImmutableMap.copyOf(all), habit.idle() ? others.habit : habit);
  }

  /**
   * These weights with other points for one rule that they name: {@code with("shift", 15)}.
   *
   * @param rule the id of a rule, for all hands or for one: {@code shift}, {@code cello.shift}.
   *     Points for all hands replace those for one hand too
   * @param newPoints whole points per unit, 0 to {@value Scoring#MAX_WEIGHT}
   * @throws FingeringException if the weights name no such rule, or the points are out of range
   */
  public Weights with(String rule, long newPoints) {
    if (!keys().contains(rule)) {
      throw new FingeringException(
          "These weights have no rule '%s'; %s"
              .formatted(
                  rule,
                  NearWord.to(rule, keys())
                      .map(near -> "did you mean '" + near + "'?")
                      .orElse("for a rule of your own, pass the rule instead of its id.")));
    }
    return withPoints(rule, newPoints);
  }

  /**
   * These weights with points for a rule, which may be one of your own.
   *
   * @param newPoints whole points per unit, 0 to {@value Scoring#MAX_WEIGHT}
   * @throws FingeringException if the points are out of range
   */
  public Weights with(CostRule rule, long newPoints) {
    return withPoints(rule.id(), newPoints);
  }

  private Weights withPoints(String key, long newPoints) {
    if (newPoints < 0 || newPoints > Scoring.MAX_WEIGHT) {
      throw new FingeringException(
          "%d points cannot be charged for '%s'; give 0 to %d."
              .formatted(newPoints, key, Scoring.MAX_WEIGHT));
    }
    return new Weights(ImmutableMap.of(key, newPoints)).orElse(this);
  }

  /** The ids of the rules that have points, for all hands and for each. */
  private ImmutableSet<String> keys() {
    return points.keySet().stream()
        .map(key -> key.substring(key.indexOf('.') + 1))
        .distinct()
        .flatMap(
            id ->
                Stream.concat(
                    Stream.of(id), Arrays.stream(HandKind.values()).map(hand -> key(hand, id))))
        .collect(ImmutableSet.toImmutableSet());
  }

  /**
   * Points per unit of a rule for a kind of hand: those for that hand, if they are given, else
   * those for all.
   *
   * @throws IllegalArgumentException if the weights do not name the rule
   */
  public long of(CostRule rule, HandKind hand) {
    Long own = points.get(key(hand, rule.id()));
    Long value = own == null ? points.get(rule.id()) : own;
    if (value == null) {
      throw new IllegalArgumentException(
          "no weight is given for the rule '" + rule.id() + "'; use Weights.with(rule, points)");
    }
    return value;
  }

  /** The key of the numbers of a habit network: {@code violin.habit-network}. */
  public static String networkKey(HandKind hand) {
    return key(hand, NETWORK);
  }

  /** The key of a rule's points for one kind of hand: {@code cello.shift}. */
  public static String key(HandKind hand, String rule) {
    return hand.name().toLowerCase(Locale.ROOT) + "." + rule;
  }
}
