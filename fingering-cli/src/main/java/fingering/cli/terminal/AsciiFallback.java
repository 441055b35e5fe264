package fingering.cli.terminal;

import com.google.common.collect.ImmutableMap;
import java.text.Normalizer;
import java.util.function.Predicate;

/** What stands for a sign where it cannot be shown, so that a player still reads it. */
public final class AsciiFallback {
  private static final ImmutableMap<Character, String> STAND_INS =
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
   * The text with stand-ins for what cannot be shown. Where one is longer than its sign, blanks
   * behind it make room, so that columns stay where they are.
   *
   * @param shown whether some characters can be shown
   */
  public static String fit(String text, Predicate<CharSequence> shown) {
    if (shown.test(text)) {
      return text;
    }
    StringBuilder fitted = new StringBuilder(text.length());
    int room = 0;
    for (int i = 0; i < text.length(); ) {
      int character = text.codePointAt(i);
      String sign = Character.toString(character);
      i += sign.length();
      String plain = shown.test(sign) ? sign : standIn(sign, i > 1 ? text.charAt(i - 2) : ' ');
      boolean blanks = sign.equals(" ") && i < text.length() && text.charAt(i) == ' ';
      if (room > 0 && blanks) {
        room--;
        continue;
      }
      room = sign.equals(" ") || sign.equals("\n") ? 0 : room + plain.length() - sign.length();
      fitted.append(plain);
    }
    return fitted.toString();
  }

  private static String standIn(String sign, char before) {
    if (sign.equals("½") && Character.isDigit(before)) {
      return ".5";
    }
    String known = sign.length() == 1 ? STAND_INS.get(sign.charAt(0)) : null;
    if (known != null) {
      return known;
    }
    // A letter with its accent: the letter.
    String bare = Normalizer.normalize(sign, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
    return bare.isEmpty() || bare.chars().anyMatch(each -> each > 126) ? "?" : bare;
  }
}
