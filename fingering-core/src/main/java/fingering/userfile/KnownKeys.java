package fingering.userfile;

import com.google.common.collect.ImmutableMap;
import fingering.tables.NearWord;
import java.util.Arrays;
import java.util.regex.Pattern;

/**
 * The keys that a file, or a part of one, may have, with an example each.
 *
 * @param what the name of the thing that has these keys, with its article: a player file
 * @param examples a line of a file by its key: {@code positions: [1, 3]}
 * @param others whether other keys are allowed as well, in lower case, joined by hyphens and dots
 */
public record KnownKeys(String what, ImmutableMap<String, String> examples, boolean others) {
  private static final Pattern KEY = Pattern.compile("[a-z]+([-.][a-z]+)*");

  /** The maximum number of keys that a message lists. */
  private static final int MAX_LISTED = 20;

  /**
   * The keys of these examples, in their order.
   *
   * @param examples lines of a file, {@code positions: [1, 3]}
   */
  public static KnownKeys of(String what, String... examples) {
    return of(what, Arrays.asList(examples));
  }

  /** The keys of these examples, in their order. */
  public static KnownKeys of(String what, Iterable<String> examples) {
    ImmutableMap.Builder<String, String> byKey = ImmutableMap.builder();
    for (String example : examples) {
      byKey.put(example.substring(0, example.indexOf(':')), example);
    }
    return new KnownKeys(what, byKey.buildOrThrow(), false);
  }

  /** Any keys in lower case, joined by hyphens and dots, with one as an example. */
  public static KnownKeys any(String what, String example) {
    return new KnownKeys(what, of(what, example).examples, true);
  }

  /** These keys together with others. */
  public KnownKeys and(KnownKeys more) {
    return new KnownKeys(
        what,
        ImmutableMap.<String, String>builder()
            .putAll(examples)
            .putAll(more.examples)
            .buildOrThrow(),
        others);
  }

  /** The same keys, for something else. */
  public KnownKeys in(String other) {
    return new KnownKeys(other, examples, others);
  }

  /** Whether the key is allowed. */
  boolean allow(String key) {
    return examples.containsKey(key) || (others && KEY.matcher(key).matches());
  }

  /** An example of a key, in quotation marks. */
  String example(String key) {
    return "'" + examples.getOrDefault(key, key + ": ...") + "'";
  }

  /** An example of the first key, in quotation marks. */
  String example() {
    return example(examples.keySet().iterator().next());
  }

  /** Why a key is unknown, with the nearest known key. */
  String unknown(String key) {
    if (key.isBlank()) {
      return "a key is missing before the colon; write one, such as " + example();
    }
    if (others) {
      return "'" + key + "' is not a key; write it in lower case, such as " + example();
    }
    return "there is no key '"
        + key
        + "'"
        + NearWord.to(key, examples.keySet())
            .map(near -> "; did you mean '" + near + "', such as " + example(near) + "?")
            .orElseGet(
                () ->
                    examples.size() > MAX_LISTED
                        ? " in " + what + "; correct or remove it; a key is written as " + example()
                        : " in " + what + "; choose from " + String.join(", ", examples.keySet()));
  }
}
