package fingering.tables;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds instruments in part names, with the words of {@code signs.table}. Immutable. */
final class PartNames {
  private static final Pattern NOT_LETTERS = Pattern.compile("[^a-z\\u0430-\\u045f]+");
  private static final Pattern QUALIFIER =
      Pattern.compile("(?<= )(i{1,3}|iv|solo|soli|string|strings|section|tutti|div)(?= )");
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

  private final ImmutableMap<String, String> words;
  private final ImmutableMap<String, String> alone;
  private final ImmutableMap<String, String> shared;
  private final ImmutableMap<String, String> initials;
  private final ImmutableSet<String> conjunctions;
  private final ImmutableSet<String> others;
  private final ImmutableSet<String> keyboards;

  PartNames(Table signs, ImmutableSet<String> ids) {
    words = signs(signs, "word", ids);
    alone = signs(signs, "alone", ids);
    shared = signs(signs, "shared", ids);
    initials = signs(signs, "initial", ids);
    conjunctions = words(signs, "and");
    others = words(signs, "other");
    keyboards = words(signs, "keyboard");
  }

  /** The signs of a kind, each with the id of its instrument. */
  static ImmutableMap<String, String> signs(Table table, String kind, ImmutableSet<String> ids) {
    ImmutableMap.Builder<String, String> signs = ImmutableMap.builder();
    for (Table.Row row : table.rows()) {
      if (row.text(0).equals(kind)) {
        row.refuseUnknown(2, ids);
        signs.put(row.text(1), row.text(2));
      }
    }
    return signs.buildKeepingLast();
  }

  /** The signs of a kind that has no instrument. */
  static ImmutableSet<String> words(Table table, String kind) {
    return table.rows().stream()
        .filter(row -> row.text(0).equals(kind))
        .map(row -> row.text(1))
        .collect(ImmutableSet.toImmutableSet());
  }

  /** The ids that a name mentions, in its order, each once. */
  ImmutableList<String> mentioned(String partName) {
    String name = plain(partName);
    // Abbreviations and 'bass' count only if the name contains no other words.
    return ids(signsOnly(name).orElseGet(() -> signsIn(name)));
  }

  boolean mentionsOther(String partName) {
    return mentions(partName, others) || mentions(partName, keyboards);
  }

  boolean mentionsKeyboard(String partName) {
    return mentions(partName, keyboards);
  }

  /** Whether every sign of the name is shared with voices or other instruments. */
  boolean isShared(String partName) {
    String name = plain(partName);
    ImmutableList<String> signs = signsOnly(name).orElse(ImmutableList.of());
    // 'String bass' is a sign, but only 'bass' is left without the word 'string'.
    return !ids(signs).isEmpty()
        && signs.stream()
            .allMatch(
                sign ->
                    shared.containsKey(sign)
                        || initials.containsKey(sign)
                        || conjunctions.contains(sign))
        && ids(signsIn(name)).isEmpty();
  }

  boolean isInitial(String partName) {
    return signsOnly(plain(partName)).orElse(ImmutableList.of()).stream()
        .anyMatch(initials::containsKey);
  }

  private static boolean mentions(String partName, ImmutableSet<String> signs) {
    String name = plain(partName);
    return signs.stream().anyMatch(sign -> name.contains(" " + sign + " "));
  }

  /** The words of a name in lower case, without accents, with blanks around each. */
  private static String plain(String partName) {
    String plain =
        ACCENTS
            .matcher(
                Normalizer.normalize(
                    partName.toLowerCase(Locale.ROOT).replace("ß", "ss").replace("ł", "l"),
                    Normalizer.Form.NFD))
            .replaceAll("");
    return " " + NOT_LETTERS.matcher(plain).replaceAll(" ").strip() + " ";
  }

  /** The signs in a name that consists only of them; empty if it contains anything else. */
  private Optional<ImmutableList<String>> signsOnly(String name) {
    ImmutableList.Builder<String> signs = ImmutableList.builder();
    String remaining = QUALIFIER.matcher(name).replaceAll(" ").strip();
    while (!remaining.isEmpty()) {
      String rest = remaining + " ";
      Optional<String> sign =
          longest(
                  rest,
                  Stream.of(
                      alone.keySet(),
                      shared.keySet(),
                      initials.keySet(),
                      words.keySet(),
                      conjunctions,
                      others))
              .filter(one -> !others.contains(one));
      if (sign.isEmpty()) {
        return Optional.empty();
      }
      signs.add(sign.get());
      remaining = remaining.substring(sign.get().length()).strip();
    }
    return Optional.of(signs.build());
  }

  /** The signs among other words. A longer name of another instrument hides them. */
  private ImmutableList<String> signsIn(String name) {
    ImmutableList.Builder<String> signs = ImmutableList.builder();
    int at = 0;
    while (at < name.length() - 1) {
      Optional<String> sign =
          name.charAt(at) == ' '
              ? longest(name.substring(at + 1), Stream.of(words.keySet(), others))
              : Optional.empty();
      sign.filter(words::containsKey).ifPresent(signs::add);
      at += sign.map(one -> one.length() + 1).orElse(1);
    }
    return signs.build();
  }

  private static Optional<String> longest(String rest, Stream<? extends Set<String>> signs) {
    return signs
        .flatMap(Set::stream)
        .filter(one -> rest.startsWith(one + " "))
        .max(Comparator.comparingInt(String::length));
  }

  private ImmutableList<String> ids(ImmutableList<String> signs) {
    return signs.stream()
        .flatMap(
            sign ->
                Stream.of(words, alone, shared, initials)
                    .flatMap(map -> Optional.ofNullable(map.get(sign)).stream())
                    .limit(1))
        .distinct()
        .collect(ImmutableList.toImmutableList());
  }
}
