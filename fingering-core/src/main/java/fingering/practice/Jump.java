package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.Place;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedText;
import fingering.music.print.PrintedText.Kind;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A da capo or dal segno. Measures are named by their index in the part.
 *
 * @param after the measure after which to go back
 * @param target the measure to go back to
 * @param until the measure after which the music then ends, or goes on at the coda; empty if it is
 *     played to the end
 * @param coda the first measure of the coda; empty if there is none to go on at
 */
record Jump(int after, int target, Optional<Integer> until, Optional<Integer> coda) {
  // Usual wordings (common practice, no source).
  private static final Pattern DA_CAPO = words("(d\\. ?c\\.|dc|da capo)( .*)?");
  private static final Pattern DAL_SEGNO = words("(d\\. ?s\\.|ds|dal? segno)( .*)?");
  private static final Pattern FINE = words("fine\\.?");
  private static final Pattern TO_CODA = words("to coda");
  private static final Pattern CODA = words("coda");

  private static Pattern words(String pattern) {
    return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
  }

  /** The first jump of a passage; empty if there is none, or its target is not in the passage. */
  static Optional<Jump> of(Passage passage, PrintedPart printed) {
    ImmutableList<PrintedText> texts = printed.texts();
    Optional<Integer> segno = signs(texts, "segno").stream().findFirst().map(Jump::measure);
    for (PrintedText text : texts) {
      Optional<Integer> target =
          is(text, DA_CAPO)
              ? beginning(passage, printed, fine(texts).orElse(measure(text)))
              : is(text, DAL_SEGNO) ? segno : Optional.empty();
      if (target.isPresent() && target.get() <= measure(text)) {
        return Optional.of(jump(text, target.get(), texts));
      }
    }
    return Optional.empty();
  }

  /**
   * The first measure of the movement that has a measure; empty if it is not in the passage. A
   * final bar line before it ends the movement before.
   */
  private static Optional<Integer> beginning(Passage passage, PrintedPart printed, int measure) {
    Optional<Integer> closing =
        printed.measures().stream()
            .filter(one -> one.index() < measure && one.end() == Bar.FINAL)
            .map(PrintedMeasure::index)
            .reduce((one, later) -> later);
    int first = passage.measures().get(0).index();
    return closing
        .map(index -> index + 1)
        .or(() -> first == 0 ? Optional.of(first) : Optional.empty());
  }

  private static Optional<Integer> fine(List<PrintedText> texts) {
    return texts.stream().filter(one -> is(one, FINE)).map(Jump::measure).findFirst();
  }

  private static Jump jump(PrintedText text, int target, List<PrintedText> texts) {
    int after = measure(text);
    if (text.text().matches("(?i).*\\bcoda\\b.*")) {
      Optional<Integer> until = toCoda(texts).filter(at -> at >= target && at <= after);
      Optional<Integer> coda = coda(texts).filter(at -> at > after);
      if (until.isPresent() && coda.isPresent()) {
        return new Jump(after, target, until, coda);
      }
    }
    Optional<Integer> fine = fine(texts).filter(at -> at >= target);
    return new Jump(after, target, fine, Optional.empty());
  }

  /** The measure after which to go to the coda: at the words, or at the first of two signs. */
  private static Optional<Integer> toCoda(List<PrintedText> texts) {
    List<PrintedText> signs = signs(texts, "coda");
    return texts.stream()
        .filter(text -> is(text, TO_CODA))
        .map(Jump::measure)
        .findFirst()
        .or(() -> signs.size() > 1 ? Optional.of(measureBefore(signs.get(0))) : Optional.empty());
  }

  /** The measure in which the coda begins: at the last sign, or at the word alone. */
  private static Optional<Integer> coda(List<PrintedText> texts) {
    List<PrintedText> signs = signs(texts, "coda");
    return signs.isEmpty()
        ? texts.stream().filter(text -> is(text, CODA)).map(Jump::measure).findFirst()
        : Optional.of(measure(signs.get(signs.size() - 1)));
  }

  private static boolean is(PrintedText text, Pattern wanted) {
    return text.kind() == Kind.WORDS && wanted.matcher(text.text()).matches();
  }

  private static ImmutableList<PrintedText> signs(List<PrintedText> texts, String sign) {
    return texts.stream()
        .filter(text -> text.kind() == Kind.JUMP && text.text().equals(sign))
        .collect(ImmutableList.toImmutableList());
  }

  private static int measure(PrintedText text) {
    return text.place().measureIndex();
  }

  /** A sign at the beginning of a measure stands over the bar line before it. */
  private static int measureBefore(PrintedText sign) {
    Place place = sign.place();
    return place.onset().signum() == 0 ? place.measureIndex() - 1 : place.measureIndex();
  }
}
