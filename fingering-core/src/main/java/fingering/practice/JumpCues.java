package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.music.Place;
import fingering.music.print.JumpMark;
import fingering.music.print.JumpMark.Kind;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedText;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Words, signs and playback marks for the order of playing. What is printed counts; a mark counts
 * where nothing of its kind is printed within a measure of it.
 *
 * @param cues all of them, in order of measures
 */
record JumpCues(ImmutableList<Cue> cues) {
  // Usual wordings (common practice, no source).
  private static final ImmutableMap<Kind, Pattern> WORDS =
      ImmutableMap.of(
          Kind.DA_CAPO, words("(d\\. ?c\\.|dc|da capo)( .*)?"),
          Kind.DAL_SEGNO, words("(d\\. ?s\\.|ds|dal? segno)( .*)?"),
          Kind.FINE, words("fine\\.?"),
          Kind.TO_CODA, words("to coda"),
          Kind.CODA, words("coda"));

  /**
   * A word, sign or mark.
   *
   * @param kind what it says
   * @param measure index of the measure at whose beginning it holds, of a segno or coda; otherwise
   *     of the measure at whose end
   * @param coda whether it says that the music goes on at a coda
   * @param sign whether it is a sign, not a word or mark
   * @param name the name that a jump shares with its target; empty if it has none
   */
  record Cue(Kind kind, int measure, boolean coda, boolean sign, String name) {}

  private static Pattern words(String pattern) {
    return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
  }

  static JumpCues of(PrintedPart printed) {
    List<Cue> seen = printed.texts().stream().flatMap(JumpCues::cues).toList();
    Stream<Cue> played =
        printed.jumps().stream()
            .map(JumpCues::cue)
            .filter(cue -> seen.stream().noneMatch(one -> says(one, cue)));
    return new JumpCues(
        Stream.concat(seen.stream(), played)
            .sorted(Comparator.comparing(Cue::measure))
            .collect(ImmutableList.toImmutableList()));
  }

  /** Whether something printed says what a mark does. A sign may stand there for the coda alone. */
  private static boolean says(Cue printed, Cue mark) {
    return printed.kind() == mark.kind()
        && !(printed.sign() && printed.kind() == Kind.TO_CODA)
        && Math.abs(printed.measure() - mark.measure()) <= 1;
  }

  private static Stream<Cue> cues(PrintedText text) {
    int measure = text.place().measureIndex();
    String words = text.text();
    return switch (text.kind()) {
      case WORDS ->
          WORDS.entrySet().stream()
              .filter(one -> one.getValue().matcher(words).matches())
              .map(
                  one ->
                      new Cue(
                          one.getKey(),
                          measure,
                          words.toLowerCase(Locale.ROOT).matches(".*\\bcoda\\b.*")
                              && one.getKey() != Kind.TO_CODA,
                          false,
                          ""));
      case JUMP ->
          words.equals("segno")
              ? Stream.of(new Cue(Kind.SEGNO, measure, false, true, ""))
              // The first of two signs of a coda is where to leave for the second.
              : Stream.of(
                  new Cue(Kind.TO_CODA, measureBefore(text.place()), false, true, ""),
                  new Cue(Kind.CODA, measure, false, true, ""));
      default -> Stream.empty();
    };
  }

  private static Cue cue(JumpMark mark) {
    boolean target = mark.kind() == Kind.SEGNO || mark.kind() == Kind.CODA;
    return new Cue(
        mark.kind(),
        target ? mark.place().measureIndex() : measureBefore(mark.place()),
        mark.kind() == Kind.TO_CODA,
        false,
        mark.name());
  }

  /** What stands at the beginning of a measure stands over the bar line before it. */
  private static int measureBefore(Place place) {
    return place.onset().signum() == 0 ? place.measureIndex() - 1 : place.measureIndex();
  }

  private Stream<Cue> of(Kind kind) {
    return cues.stream().filter(cue -> cue.kind() == kind);
  }

  /** Each da capo and dal segno. */
  ImmutableList<Cue> jumps() {
    return cues.stream()
        .filter(cue -> cue.kind() == Kind.DA_CAPO || cue.kind() == Kind.DAL_SEGNO)
        .collect(ImmutableList.toImmutableList());
  }

  /** The measure of the segno of a jump: that of its name, or else the first one. */
  Optional<Integer> segno(Cue jump) {
    return of(Kind.SEGNO)
        .filter(cue -> !jump.name().isEmpty() && cue.name().equals(jump.name()))
        .findFirst()
        .or(() -> of(Kind.SEGNO).findFirst())
        .map(Cue::measure);
  }

  /** The last end after a measure, and not after another one. */
  Optional<Integer> fine(int after, int atMost) {
    return of(Kind.FINE)
        .map(Cue::measure)
        .filter(measure -> measure > after && measure <= atMost)
        .reduce((one, later) -> later);
  }

  /** Where to leave for the coda from some measures: at the words or marks, or at a sign. */
  Optional<Cue> toCoda(int from, int atMost) {
    List<Cue> all =
        of(Kind.TO_CODA).filter(cue -> cue.measure() >= from && cue.measure() <= atMost).toList();
    return all.stream().filter(cue -> !cue.sign()).findFirst().or(() -> all.stream().findFirst());
  }

  /** The measure in which the coda after a measure begins: at a sign, or at the word or mark. */
  Optional<Integer> coda(int after) {
    List<Cue> all = of(Kind.CODA).filter(cue -> cue.measure() > after).toList();
    return all.stream()
        .filter(Cue::sign)
        .findFirst()
        .or(() -> all.stream().findFirst())
        .map(Cue::measure);
  }
}
