package fingering.userfile;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.tables.FingeringException;
import fingering.userfile.YamlNode.Entry;
import fingering.userfile.YamlNode.Mapping;
import fingering.userfile.YamlNode.Scalar;
import fingering.userfile.YamlNode.Sequence;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Reads the values of the keys of a file, or of a part of one. Every key is known. All methods that
 * read a value throw a {@link UserFileException} with the line of the value if it cannot be read; a
 * {@link FingeringException} of a reading function gets that line too.
 */
public final class UserFields {
  private static final Splitter COMMAS = Splitter.on(',').trimResults();
  private static final Pattern WHOLE_NUMBER = Pattern.compile("\\d{1,9}");
  private static final String NONE = "none";

  private final Mapping mapping;
  private final KnownKeys known;

  private UserFields(Mapping mapping, KnownKeys known) {
    this.mapping = mapping;
    this.known = known;
    for (var entry : mapping.entries().entrySet()) {
      if (!known.allow(entry.getKey())) {
        throw entry.getValue().place().refusal(known.unknown(entry.getKey()));
      }
    }
    if (mapping.entries().isEmpty()) {
      throw refusal("there are no keys; write some, such as " + known.example());
    }
  }

  /**
   * Reads a file.
   *
   * @throws FingeringException if there is no such file, it is too large or not in UTF-8, or it is
   *     refused as by {@link #parse}
   */
  public static UserFields read(Path file, KnownKeys known) {
    return parse(file.toString(), SmallFile.text(file, known.what()), known);
  }

  /**
   * Reads the text of a file.
   *
   * @param file the name of the file, for messages
   * @throws UserFileException if the text cannot be read, see {@link YamlNode#parse}, or has no
   *     keys or an unknown key
   */
  public static UserFields parse(String file, String text, KnownKeys known) {
    return of(YamlNode.parse(file, text), known);
  }

  /**
   * The fields of a node.
   *
   * @throws UserFileException if it does not consist of keys with values, has none, or has an
   *     unknown key
   */
  public static UserFields of(YamlNode node, KnownKeys known) {
    if (node instanceof Mapping mapping) {
      return new UserFields(mapping, known);
    }
    if (node instanceof Scalar scalar && YamlError.hasEqualsSign(firstLine(scalar))) {
      throw node.place().refusal(YamlError.colon(firstLine(scalar)));
    }
    throw node.place()
        .refusal(known.what() + " consists of keys with values, such as " + known.example());
  }

  private static String firstLine(Scalar scalar) {
    return scalar.text().lines().findFirst().orElse("");
  }

  /** Where the file, or this part of it, begins. */
  public FileLine place() {
    return mapping.place();
  }

  /** The keys that are given, in their order. */
  public ImmutableSet<String> keys() {
    return mapping.entries().keySet();
  }

  /** Whether a key is given. */
  public boolean has(String key) {
    return entry(key).isPresent();
  }

  /** Where the value of a key begins; where this part begins if the key is not given. */
  public FileLine place(String key) {
    return entry(key).map(entry -> entry.value().place()).orElse(place());
  }

  /** An exception for the whole file, or this part of it. */
  public UserFileException refusal(String problem) {
    return place().refusal(problem);
  }

  /** An exception for a key that is required and not given. */
  public UserFileException missing(String key) {
    return refusal("'" + key + "' is missing; add it, such as " + known.example(key));
  }

  /** The value of a key, as written. */
  public Optional<String> text(String key) {
    return value(key, Function.identity());
  }

  /** The single value of a key. */
  public <T> Optional<T> value(String key, Function<String, T> reading) {
    return entry(key).map(entry -> read(single(key, entry.value()), reading));
  }

  /** The whole number of a key, within limits. */
  public Optional<Integer> number(String key, int min, int max) {
    return value(
        key,
        text -> {
          if (WHOLE_NUMBER.matcher(text).matches()) {
            int number = Integer.parseInt(text);
            if (number >= min && number <= max) {
              return number;
            }
          }
          throw new FingeringException(
              "'%s' must be a whole number from %d to %d, such as %s, not '%s'"
                  .formatted(key, min, max, known.example(key), text));
        });
  }

  /** The value of a key that is yes or no, or true or false. */
  public Optional<Boolean> yesNo(String key) {
    return value(
        key,
        text ->
            switch (text) {
              case "yes", "true" -> true;
              case "no", "false" -> false;
              default ->
                  throw new FingeringException(
                      "'%s' must be yes or no, not '%s'".formatted(key, text));
            });
  }

  /** The value of a key that is one of some words. */
  public Optional<String> choice(String key, String... words) {
    return value(
        key,
        text -> {
          if (List.of(words).contains(text)) {
            return text;
          }
          throw new FingeringException(
              "'%s' is %s, not '%s'".formatted(key, String.join(" or ", words), text));
        });
  }

  /** The values of a key that has a single value or a list. */
  public <T> Optional<ImmutableList<T>> values(String key, Function<String, T> reading) {
    return entry(key).map(entry -> each(key, scalars(key, entry.value()), reading));
  }

  /** The items of a key that has a list, or a text in which commas separate the items. */
  public <T> Optional<ImmutableList<T>> list(String key, Function<String, T> reading) {
    return entry(key).map(entry -> each(key, items(key, entry.value()), reading));
  }

  /** The items of a key that has a list; no items for the word none and for an empty list. */
  public <T> Optional<ImmutableList<T>> listOrNone(String key, Function<String, T> reading) {
    return entry(key)
        .map(
            entry -> {
              YamlNode value = entry.value();
              boolean none =
                  value instanceof Sequence list
                      ? list.items().isEmpty() || isNone(list.items())
                      : isNone(ImmutableList.of(value));
              return none ? ImmutableList.of() : each(key, items(key, value), reading);
            });
  }

  private static boolean isNone(ImmutableList<YamlNode> items) {
    return items.size() == 1
        && items.get(0) instanceof Scalar only
        && only.text().strip().equalsIgnoreCase(NONE);
  }

  /** The items of a key that has a list in which each item has keys of its own. */
  public Optional<ImmutableList<UserFields>> parts(String key, KnownKeys keys) {
    return entry(key)
        .map(
            entry -> {
              if (entry.value() instanceof Sequence list && !list.items().isEmpty()) {
                return list.items().stream()
                    .map(item -> of(item, keys))
                    .collect(ImmutableList.toImmutableList());
              }
              throw entry
                  .value()
                  .place()
                  .refusal(
                      "'%s' is a list with one item or more, such as '- %s'"
                          .formatted(key, keys.examples().values().iterator().next()));
            });
  }

  /** The value of a key that has keys of its own. */
  public Optional<UserFields> part(String key, KnownKeys keys) {
    return entry(key).map(entry -> of(entry.value(), keys));
  }

  /**
   * The keys and values below a key, where any key may stand; at least one pair.
   *
   * @param reading makes something of a key and its value
   */
  public <T> Optional<ImmutableList<T>> pairs(String key, BiFunction<String, String, T> reading) {
    return entry(key).map(entry -> pairs(key, entry.value(), reading));
  }

  private <T> ImmutableList<T> pairs(
      String key, YamlNode value, BiFunction<String, String, T> reading) {
    if (!(value instanceof Mapping pairs) || pairs.entries().isEmpty()) {
      throw value
          .place()
          .refusal("'%s' consists of pairs, such as %s".formatted(key, known.example(key)));
    }
    return pairs.entries().entrySet().stream()
        .map(
            pair ->
                read(
                    single(key, pair.getValue().value()),
                    text -> reading.apply(pair.getKey(), text)))
        .collect(ImmutableList.toImmutableList());
  }

  private Optional<Entry> entry(String key) {
    if (!known.allow(key)) {
      throw new IllegalArgumentException("'" + key + "' is not declared as a key");
    }
    return Optional.ofNullable(mapping.entries().get(key));
  }

  private Scalar single(String key, YamlNode value) {
    if (value instanceof Scalar scalar) {
      return filled(key, scalar);
    }
    throw value
        .place()
        .refusal("'%s' has a single value, such as %s".formatted(key, known.example(key)));
  }

  private Scalar filled(String key, Scalar scalar) {
    if (scalar.text().isBlank()) {
      throw scalar
          .place()
          .refusal(
              "'%s' has no value; fill it in, such as %s, or remove it"
                  .formatted(key, known.example(key)));
    }
    return scalar;
  }

  private ImmutableList<Scalar> scalars(String key, YamlNode value) {
    if (value instanceof Sequence list && !list.items().isEmpty()) {
      return list.items().stream()
          .map(item -> item instanceof Scalar scalar ? scalar : notScalars(key, item))
          .collect(ImmutableList.toImmutableList());
    }
    return ImmutableList.of(value instanceof Scalar scalar ? scalar : notScalars(key, value));
  }

  private Scalar notScalars(String key, YamlNode value) {
    throw value
        .place()
        .refusal(
            "'%s' has one value or a list of values, such as %s"
                .formatted(key, known.example(key)));
  }

  private ImmutableList<Scalar> items(String key, YamlNode value) {
    return value instanceof Scalar scalar
        ? COMMAS
            .splitToStream(filled(key, scalar).text())
            .map(item -> new Scalar(scalar.place(), item))
            .collect(ImmutableList.toImmutableList())
        : scalars(key, value);
  }

  private <T> ImmutableList<T> each(
      String key, ImmutableList<Scalar> scalars, Function<String, T> reading) {
    if (scalars.size() > 1) {
      for (Scalar scalar : scalars) {
        if (scalar.text().isBlank()) {
          throw scalar
              .place()
              .refusal("'%s' has an empty item; fill it in, or remove its comma".formatted(key));
        }
      }
    }
    return scalars.stream()
        .map(scalar -> read(filled(key, scalar), reading))
        .collect(ImmutableList.toImmutableList());
  }

  private static <T> T read(Scalar scalar, Function<String, T> reading) {
    try {
      return reading.apply(scalar.text());
    } catch (UserFileException e) {
      throw e;
    } catch (FingeringException e) {
      throw scalar.place().refusal(e);
    }
  }
}
