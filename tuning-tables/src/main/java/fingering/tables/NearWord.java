package fingering.tables;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Finds the known word that a mistyped one probably means. */
public final class NearWord {
  /**
   * The least Jaro-Winkler similarity (0 to 1) of a word that is suggested. Words with one wrong
   * letter, and beginnings of a third of a word or more, are more similar than that; different
   * words of this program are less similar (tried on its options and keys, no source).
   */
  private static final double LEAST_SIMILARITY = 0.84;

  private static final JaroWinklerSimilarity SIMILARITY = new JaroWinklerSimilarity();

  private NearWord() {}

  /**
   * The known word that is most similar to a typed one; empty if none is similar enough. Case and
   * leading hyphens do not matter.
   */
  public static Optional<String> to(String typed, Collection<String> known) {
    String wrong = bare(typed);
    return known.stream()
        .max(Comparator.comparingDouble(word -> similarity(wrong, word)))
        .filter(word -> similarity(wrong, word) >= LEAST_SIMILARITY);
  }

  /**
   * What to type instead of an unknown word: {@code did you mean 'viola'?} or, if no known word is
   * similar, {@code choose one of violin, viola}.
   */
  public static String advice(String typed, Collection<String> known) {
    return to(typed, known)
        .map("did you mean '%s'?"::formatted)
        .orElseGet(() -> "choose one of " + String.join(", ", known));
  }

  private static double similarity(String wrong, String word) {
    return SIMILARITY.apply(wrong, bare(word));
  }

  private static String bare(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replaceFirst("^-+", "");
  }
}
