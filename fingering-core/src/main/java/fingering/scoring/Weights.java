package fingering.scoring;

import com.google.common.collect.ImmutableMap;
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

  /** The weights of common practice that come with the library. */
  public static Weights commonPractice() {
    String name = "common-practice.weights";
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
   * Reads weights.
   *
   * @param name what to call the text in a complaint, a file name say
   * @throws IllegalArgumentException if a line cannot be read or a rule stands twice
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
        throw new IllegalArgumentException(
            name + ", line " + number + ": write a rule and its points, such as 'shift = 200'");
      }
      if (!seen.add(matcher.group(1))) {
        throw new IllegalArgumentException(
            name + ", line " + number + ": the rule '" + matcher.group(1) + "' stands twice");
      }
      points.put(matcher.group(1), Long.parseLong(matcher.group(2)));
    }
    return new Weights(points.buildOrThrow());
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
