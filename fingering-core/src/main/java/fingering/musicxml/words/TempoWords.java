package fingering.musicxml.words;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.musicxml.words.Phrases.Phrase;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Recognises words for a tempo. A teacher who opens a part without a metronome mark looks up the
 * word on the metronome, takes a little off for <i>ma non troppo</i>, adds a little for <i>con
 * moto</i>, and does not touch the tempo for <i>ritardando</i>: that is for the player to shape.
 */
public final class TempoWords {

  /** The kinds of instructions. */
  public enum Kind {
    /** A tempo in beats per minute. */
    BEATS,
    /** A tempo relative to the tempo before, in percent of it. */
    PERCENT,
    /** The first tempo of the movement again. */
    FIRST,
    /** The tempo before a relative one again. */
    AGAIN
  }

  /**
   * An instruction that was read.
   *
   * @param kind its kind
   * @param number beats per minute, or percent; 0 for {@link Kind#FIRST} and {@link Kind#AGAIN}
   */
  public record Instruction(Kind kind, int number) {}

  /** Words of one heading do not qualify those of the next: {@code Menuetto. Allegretto}. */
  private static final Pattern HEADING_END = Pattern.compile("[.;:/–—]+|\\s-+\\s");

  /** Above this many beats per minute a tempo is quick, and <i>molto</i> makes it quicker. */
  private static final int MIDDLE = 100;

  /** Longer text is a sentence, not a heading. */
  private static final int MOST_CHARACTERS = 200;

  /** The lowest and the highest setting of a metronome. */
  private static final int SLOWEST = 30;

  private static final int FASTEST = 208;

  /** The weight of the first of two tempi, as in Andante quasi allegretto; the other has 1. */
  private static final int FIRST_WEIGHT = 2;

  /** A tempo after these words is not the tempo of the music. */
  private static final ImmutableSet<String> NEGATIONS =
      ImmutableSet.of(
          "non", "nicht", "pas", "not", "no", "sans", "ohne", "piu", "meno", "plus", "moins");

  private static final ImmutableSet<String> JOINING = ImmutableSet.of("e", "ed", "und", "et", "ma");

  private static final class Holder {
    static final Phrases STANDARD =
        Phrases.load(
            "tempo-words.table",
            ImmutableSet.of(
                "tempo", "dance", "change", "much", "little", "more", "first", "again", "not"));
  }

  private TempoWords() {}

  /** Returns the instruction in a text; empty if it has none, or changes the tempo gradually. */
  public static Optional<Instruction> read(String text) {
    if (text.length() > MOST_CHARACTERS || has("not", Phrases.words(text))) {
      return Optional.empty();
    }
    List<ImmutableList<String>> headings =
        HEADING_END.splitAsStream(text).map(Phrases::words).toList();
    return headings.stream()
        .flatMap(words -> heading(words, "tempo").stream())
        .findFirst()
        .or(() -> headings.stream().flatMap(words -> heading(words, "dance").stream()).findFirst());
  }

  private static boolean has(String kind, List<String> words) {
    return Holder.STANDARD.in(words).stream().anyMatch(phrase -> phrase.kind().equals(kind));
  }

  private static Optional<Instruction> heading(List<String> words, String kind) {
    List<Phrase> phrases = Holder.STANDARD.in(words);
    for (int i = 0; i < phrases.size(); i++) {
      Phrase phrase = phrases.get(i);
      if (phrase.kind().equals(kind) && !denied(phrase, words)) {
        return Optional.of(beats(phrases, i, words));
      }
      switch (phrase.kind()) {
        case "change" -> {
          return Optional.of(new Instruction(Kind.PERCENT, phrase.value()));
        }
        case "first" -> {
          return Optional.of(new Instruction(Kind.FIRST, 0));
        }
        case "again" -> {
          return Optional.of(new Instruction(Kind.AGAIN, 0));
        }
        default -> {}
      }
    }
    return Optional.empty();
  }

  private static boolean denied(Phrase phrase, List<String> words) {
    return phrase.from() > 0 && NEGATIONS.contains(words.get(phrase.from() - 1));
  }

  /** The tempo of a word and of the words that qualify it. */
  private static Instruction beats(List<Phrase> phrases, int at, List<String> words) {
    double beats = phrases.get(at).value();
    for (Phrase other : phrases.subList(at + 1, phrases.size())) {
      if (other.kind().equals("tempo") && !denied(other, words)) {
        beats = (FIRST_WEIGHT * beats + other.value()) / (FIRST_WEIGHT + 1);
        break;
      }
    }
    boolean quick = beats > MIDDLE;
    for (int i = 0; i < phrases.size(); i++) {
      Phrase phrase = phrases.get(i);
      double share = phrase.value() / 100.0;
      switch (phrase.kind()) {
        case "much" -> beats *= qualifies(phrases, i, words) ? quick ? share : 1 / share : 1;
        case "little" -> beats *= qualifies(phrases, i, words) ? quick ? 1 / share : share : 1;
        case "more" -> beats *= denied(phrase, words) ? 1 : share;
        default -> {}
      }
    }
    int rounded = (int) Math.round(Math.max(SLOWEST, Math.min(FASTEST, beats)));
    return new Instruction(Kind.BEATS, rounded);
  }

  /**
   * Whether a word such as <i>molto</i> belongs to a tempo: before it, as in Molto allegro, or
   * after it and not before another word, as in Adagio molto espressivo.
   */
  private static boolean qualifies(List<Phrase> phrases, int at, List<String> words) {
    Phrase phrase = phrases.get(at);
    boolean known = at + 1 < phrases.size() && phrases.get(at + 1).from() == phrase.next();
    boolean last = phrase.next() == words.size() || JOINING.contains(words.get(phrase.next()));
    boolean after = at > 0 && phrases.get(at - 1).next() == phrase.from();
    return known || (last && after);
  }
}
