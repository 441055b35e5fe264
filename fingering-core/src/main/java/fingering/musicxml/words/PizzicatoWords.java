package fingering.musicxml.words;

import java.util.Locale;
import java.util.regex.Pattern;

/** Recognises words that ask for pizzicato or for the bow. */
public final class PizzicatoWords {
  private static final String LEFT_HAND =
      "(?:l\\.? ?h\\b|left\\b|m\\.? ?s\\b|m\\.? ?g\\b|(?:mano )?sinistra|main gauche|linken? hand)";

  /** {@code l.h. pizz.}, {@code pizz. m.s.}, {@code left-hand pizz}, or a plus sign alone. */
  private static final Pattern LEFT =
      Pattern.compile(
          "\\W*(?:%1$s\\W*(?:hand\\W+)?pizz.*|pizz[a-z]*\\W*(?:\\S+ ){0,3}\\W*%1$s.*)|\\W*\\+\\W*"
              .formatted(LEFT_HAND),
          Pattern.DOTALL);

  /** {@code snap pizz.} and {@code Bartók pizz.} */
  private static final Pattern SNAP =
      Pattern.compile("\\W*(?:snap|bart.{1,2}k)\\W*pizz.*", Pattern.DOTALL);

  private PizzicatoWords() {}

  /** Returns whether words ask the left hand to pluck. */
  public static boolean askForLeftHand(String words) {
    return LEFT.matcher(normal(words)).matches();
  }

  /** Returns whether words ask for a snap pizzicato. */
  public static boolean askForSnap(String words) {
    return SNAP.matcher(normal(words)).matches();
  }

  /** Returns whether words begin with {@code pizz}. */
  public static boolean askForPizzicato(String words) {
    return normal(words).startsWith("pizz");
  }

  /** Returns whether words begin with {@code arco}. */
  public static boolean askForBow(String words) {
    return normal(words).startsWith("arco");
  }

  private static String normal(String words) {
    return words.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
