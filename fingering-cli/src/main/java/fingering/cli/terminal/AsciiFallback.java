package fingering.cli.terminal;

import com.google.common.collect.ImmutableMap;
import java.text.Normalizer;
import java.util.function.Predicate;

/** Readable replacements for characters that a terminal cannot show. */
public final class AsciiFallback {
  private static final ImmutableMap<Character, String> REPLACEMENTS =
      ImmutableMap.<Character, String>builder()
          .put('♯', "#")
          .put('♭', "b")
          .put('♮', "n")
          .put('–', "-")
          .put('—', "-")
          .put('−', "-")
          .put('×', "x")
          .put('·', ".")
          .put('•', "-")
          .put('…', "...")
          .put('°', "o")
          .put('◇', "<>")
          .put('↑', "^")
          .put('↓', "v")
          .put('→', "->")
          .put('≠', "*")
          .put('│', "|")
          .put('─', "-")
          .put('═', "=")
          .put('╪', "+")
          .put('●', "*")
          .put('○', "o")
          .put('²', "2")
          .put('³', "3")
          .put('½', "1/2")
          .put('ß', "ss")
          .put('’', "'")
          .put('‘', "'")
          .put('“', "\"")
          .put('”', "\"")
          .put('\u00a0', " ")
          .buildOrThrow();

  private AsciiFallback() {}

  /**
   * The text with replacements for the characters that cannot be shown. A replacement longer than
   * its character takes up spaces after it, so that columns stay aligned.
   *
   * @param canShow whether the terminal can show a text
   */
  public static String fit(String text, Predicate<CharSequence> canShow) {
    if (canShow.test(text)) {
      return text;
    }
    StringBuilder fitted = new StringBuilder(text.length());
    int surplus = 0;
    for (int i = 0; i < text.length(); ) {
      String sign = Character.toString(text.codePointAt(i));
      i += sign.length();
      String plain =
          canShow.test(sign) ? sign : replacement(sign, i > 1 ? text.charAt(i - 2) : ' ');
      boolean spareSpace = sign.equals(" ") && i < text.length() && text.charAt(i) == ' ';
      if (surplus > 0 && spareSpace) {
        surplus--;
        continue;
      }
      surplus =
          sign.equals(" ") || sign.equals("\n") ? 0 : surplus + plain.length() - sign.length();
      fitted.append(plain);
    }
    return fitted.toString();
  }

  private static String replacement(String sign, char before) {
    if (sign.equals("½") && Character.isDigit(before)) {
      return ".5";
    }
    String known = sign.length() == 1 ? REPLACEMENTS.get(sign.charAt(0)) : null;
    if (known != null) {
      return known;
    }
    // An accented letter becomes the bare letter.
    String bare = Normalizer.normalize(sign, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
    return bare.isEmpty() || bare.chars().anyMatch(each -> each > 126) ? "?" : bare;
  }
}
