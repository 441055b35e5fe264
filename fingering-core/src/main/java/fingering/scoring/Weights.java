package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Points that each unit of each rule costs, as a file gives them: lines of {@code rule = points},
 * with {@code #} before remarks.
 *
 * @param points whole points, 0 or more, by rule id
 */
public record Weights(ImmutableMap<String, Long> points) {
  private static final Pattern LINE =
      Pattern.compile("([a-z][a-z-]*)\\s*=\\s*(\\d{1,6})\\s*(#.*)?");

  /** The names of the weights that come with the library; each is the name of a file beside. */
  private static final ImmutableList<String> PRESETS =
      ImmutableList.of("common-practice", "beginner", "intermediate", "advanced");

  /** The weights of common practice that come with the library. */
  public static Weights commonPractice() {
    return preset(PRESETS.get(0));
  }

  /** The names of the weights that come with the library, the usual ones first. */
  public static ImmutableList<String> presets() {
    return PRESETS;
  }

  /**
   * The name of a preset as {@link #presets()} has it, typed in capital or small letters.
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
   * Weights that come with the library.
   *
   * @param preset one of {@link #presets()}, in capital or small letters
   * @throws FingeringException if there are none of that name
   */
  public static Weights preset(String preset) {
    String name = presetName(preset) + ".weights";
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
   * Reads weights of some rules and no others; they need not name all of them, see {@link #orElse}.
   *
   * @param name what to call the text in a complaint, a file name say
   * @throws FingeringException if a line cannot be read, a rule stands twice or is unknown; the
   *     message is one sentence
   */
  public static Weights parse(String name, String text, ImmutableList<CostRule> rules) {
    Weights weights = parse(name, text);
    ImmutableSet<String> known =
        rules.stream().map(CostRule::id).collect(ImmutableSet.toImmutableSet());
    for (String rule : weights.points().keySet()) {
      if (!known.contains(rule)) {
        throw new FingeringException(
            name
                + ", line "
                + line(rule, text)
                + ": there is no rule '"
                + rule
                + "'; correct its name, or take the line out");
      }
    }
    return weights;
  }

  /** The number of the line that gives a rule its points. */
  private static int line(String rule, String text) {
    int number = 1;
    for (String line : text.lines().toList()) {
      Matcher matcher = LINE.matcher(line.strip());
      if (matcher.matches() && matcher.group(1).equals(rule)) {
        return number;
      }
      number++;
    }
    throw new IllegalStateException("no line gives '" + rule + "' its points");
  }

  /**
   * Reads weights.
   *
   * @param name what to call the text in a complaint, a file name say
   * @throws FingeringException if a line cannot be read or a rule stands twice
   */
  public static Weights parse(String name, String text) {
    ImmutableMap.Builder<String, Long> points = ImmutableMap.builder();
    java.util.Set<String> seen = new java.util.HashSet<>();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      if (line.isBlank() || line.strip().startsWith("#")) {
        continue;
      }
      Matcher matcher = LINE.matcher(line.strip());
      if (!matcher.matches()) {
        throw new FingeringException(
            name + ", line " + number + ": write a rule and its points, such as 'shift = 200'");
      }
      if (!seen.add(matcher.group(1))) {
        throw new FingeringException(
            name + ", line " + number + ": the rule '" + matcher.group(1) + "' stands twice");
      }
      points.put(matcher.group(1), Long.parseLong(matcher.group(2)));
    }
    return new Weights(points.buildOrThrow());
  }

  /** These weights, and for each rule that they do not name what others give it. */
  public Weights orElse(Weights others) {
    return new Weights(
        ImmutableMap.<String, Long>builder()
            .putAll(others.points)
            .putAll(points)
            .buildKeepingLast());
  }

  /**
   * Points a unit of that rule.
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
