package fingering.page.view;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import com.google.common.io.Resources;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;

/**
 * The texts of pages, from one file. Values are set in as {@link String#format} does it. Keys are
 * written out where they are used, so that a test can compare them with the file.
 */
public final class PageText {
  private static final String FILE = "/fingering/page/texts.properties";

  private static final ImmutableMap<String, String> TEXTS = read();

  private PageText() {}

  private static ImmutableMap<String, String> read() {
    Properties texts = new Properties();
    try {
      texts.load(
          new StringReader(
              Resources.toString(
                  Resources.getResource(PageText.class, FILE), StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Maps.fromProperties(texts);
  }

  /**
   * The text under a key.
   *
   * @param values the values to set in
   * @throws IllegalArgumentException if there is no text under that key
   */
  public static String text(String key, Object... values) {
    String text = TEXTS.get(key);
    if (text == null) {
      throw new IllegalArgumentException(FILE + " has no text '" + key + "'");
    }
    return String.format(Locale.ROOT, text, values);
  }

  /**
   * The text for a number of things: the one under {@code KEY.one} for 1, else under {@code
   * KEY.other}. The number is its first value.
   */
  public static String counted(String key, int number) {
    return text(key + (number == 1 ? ".one" : ".other"), number);
  }

  /** All texts by key. */
  public static ImmutableMap<String, String> all() {
    return TEXTS;
  }
}
