package fingering.engraving.notes;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableSet;
import fingering.music.print.PrintedText;
import fingering.music.print.Side;

/** The side of the staff on which texts stand. */
public final class TextSides {
  /** Words that belong to the dynamics (common practice). */
  private static final ImmutableSet<String> DYNAMIC_WORDS =
      ImmutableSet.of(
          "cresc",
          "crescendo",
          "decresc",
          "decrescendo",
          "dim",
          "dimin",
          "diminuendo",
          "subito",
          "sub",
          "più",
          "piu",
          "meno",
          "poco",
          "molto",
          "sempre",
          "mezza",
          "sotto",
          "al",
          "f",
          "p",
          "ff",
          "pp",
          "mf",
          "mp",
          "fp",
          "forte",
          "piano",
          "morendo",
          "smorzando",
          "smorz",
          "calando",
          "perdendosi");

  /** A row of texts that stand beside each other. */
  public enum Row {
    /** Dynamics and what goes with them. */
    BELOW,
    /** Words over the staff. */
    WORDS,
    /** Tempo marks over everything. */
    TEMPO
  }

  private TextSides() {}

  /** The row in which a text stands, unless it goes with a metronome mark. */
  public static Row row(PrintedText text) {
    if (below(text)) {
      return Row.BELOW;
    }
    return text.kind() == PrintedText.Kind.TEMPO || text.style().bold() ? Row.TEMPO : Row.WORDS;
  }

  /** Whether a text stands below the staff. */
  public static boolean below(PrintedText text) {
    if (text.kind() == PrintedText.Kind.DYNAMIC) {
      return true;
    }
    if (text.kind() != PrintedText.Kind.WORDS || text.side() == Side.ABOVE) {
      return false;
    }
    if (text.side() == Side.BELOW) {
      return true;
    }
    for (String word : Ascii.toLowerCase(text.text()).split("[ .,]+", -1)) {
      if (!word.isEmpty() && !DYNAMIC_WORDS.contains(word)) {
        return false;
      }
    }
    return true;
  }
}
