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

/** Decides from the part names and the score whether a part is for one player or a section. */
final class ForcesDetector {
  /**
   * The fewest string parts of an orchestra, which also has a double bass or at least {@link
   * #ORCHESTRA_OTHERS} other parts (common practice, no source).
   */
  private static final int ORCHESTRA_STRINGS = 4;

  private static final int ORCHESTRA_OTHERS = 3;

  private ForcesDetector() {}

  /** Returns who plays from a part. */
  static Forces of(Score score, PartInfo part, ScoreWords words) {
    ImmutableSet<ScoreWords.Kind> meanings = words.read(part.name());
    if (meanings.contains(ScoreWords.Kind.ONE)) {
      return Forces.ONE_PLAYER;
    }
    return meanings.contains(ScoreWords.Kind.SECTION) || orchestra(score, words)
        ? Forces.SECTION
        : Forces.ONE_PLAYER;
  }

  /** Returns a remark if there are parts whose names do not say who plays. */
  static Optional<String> remark(ImmutableList<PartCheck> parts, ScoreWords words) {
    return parts.stream()
        .filter(
            check -> {
              ImmutableSet<ScoreWords.Kind> meanings = words.read(check.part().name());
              return !meanings.contains(ScoreWords.Kind.ONE)
                  && !meanings.contains(ScoreWords.Kind.SECTION);
            })
        .findFirst()
        .map(
            check ->
                check.forces() == Forces.SECTION
                    ? "each part is assumed to be for a section, as in an orchestra"
                    : "each part is assumed to be for one player, as in chamber music");
  }

  private static boolean orchestra(Score score, ScoreWords words) {
    int strings = 0;
    int others = 0;
    boolean bass = false;
    boolean sections = false;
    for (PartInfo part : score.parts()) {
      boolean string = part.isString();
      strings += string ? 1 : 0;
      others += string ? 0 : 1;
      bass |= string && part.instrument().map(Instrument::id).orElse("").equals("bass");
      sections |= words.read(part.name()).contains(ScoreWords.Kind.SECTION);
    }
    return sections || (strings >= ORCHESTRA_STRINGS && (bass || others >= ORCHESTRA_OTHERS));
  }
}
