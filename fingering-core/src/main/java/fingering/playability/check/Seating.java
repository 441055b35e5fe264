package fingering.playability.check;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.playability.Forces;
import fingering.playability.PartCheck;
import fingering.playability.part.ScoreWords;
import fingering.tables.Instrument;
import java.util.Optional;

/** Tells from the names of the parts whether one player or a section plays from each. */
final class Seating {
  /** Chamber music for strings with a bass has fewer string parts, or fewer others. */
  private static final int ORCHESTRA_STRINGS = 4;

  private static final int ORCHESTRA_OTHERS = 3;

  private Seating() {}

  /** Who plays from a part. */
  static Forces of(Score score, PartInfo part, ScoreWords words) {
    ImmutableSet<ScoreWords.Kind> told = words.read(part.name());
    if (told.contains(ScoreWords.Kind.ONE)) {
      return Forces.ONE_PLAYER;
    }
    return told.contains(ScoreWords.Kind.SECTION) || orchestra(score, words)
        ? Forces.SECTION
        : Forces.ONE_PLAYER;
  }

  /** What was assumed of parts whose names do not tell. */
  static Optional<String> remark(ImmutableList<PartCheck> parts, ScoreWords words) {
    return parts.stream()
        .filter(
            check -> {
              ImmutableSet<ScoreWords.Kind> told = words.read(check.part().name());
              return !told.contains(ScoreWords.Kind.ONE) && !told.contains(ScoreWords.Kind.SECTION);
            })
        .findFirst()
        .map(
            check ->
                check.forces() == Forces.SECTION
                    ? "parts are taken for sections, as in an orchestra"
                    : "parts are taken for one player each, as in chamber music");
  }

  private static boolean orchestra(Score score, ScoreWords words) {
    int strings = 0;
    int others = 0;
    boolean bass = false;
    boolean sections = false;
    for (PartInfo part : score.parts()) {
      boolean string = part.instrument().isPresent() && !part.guessed();
      strings += string ? 1 : 0;
      others += string ? 0 : 1;
      bass |= string && part.instrument().map(Instrument::id).orElse("").equals("bass");
      sections |= words.read(part.name()).contains(ScoreWords.Kind.SECTION);
    }
    return sections || (strings >= ORCHESTRA_STRINGS && (bass || others >= ORCHESTRA_OTHERS));
  }
}
