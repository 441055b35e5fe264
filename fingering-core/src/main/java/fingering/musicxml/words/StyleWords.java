package fingering.musicxml.words;

import com.google.common.collect.ImmutableSet;
import fingering.music.PlayingStyle;
import java.util.Optional;

/**
 * Recognises words for the playing style. A teacher reads <i>dolce</i> as: sing on one string, let
 * the line ring; <i>spiccato</i> as: short strokes, so the left hand may jump between them; and
 * words of another character, such as <i>con fuoco</i>, as the end of either.
 */
public final class StyleWords {
  private static final class Holder {
    static final Phrases STANDARD =
        Phrases.load("style-words.table", ImmutableSet.of("singing", "detached", "plain"));
  }

  private StyleWords() {}

  /**
   * Returns the style that the words of a text begin. {@link PlayingStyle#PLAIN} means that they
   * end another style. Of several words the first counts.
   */
  public static Optional<PlayingStyle> read(String text) {
    return Holder.STANDARD.in(Phrases.words(text)).stream()
        .findFirst()
        .map(
            phrase ->
                switch (phrase.kind()) {
                  case "singing" -> PlayingStyle.SINGING;
                  case "detached" -> PlayingStyle.DETACHED;
                  default -> PlayingStyle.PLAIN;
                });
  }
}
