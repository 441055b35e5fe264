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

  /** The fewest string parts of an orchestra of students, unless they make a quartet. */
  private static final int STUDENTS_STRINGS = 3;

  /** The instruments of a string quartet, sorted. */
  private static final ImmutableList<String> QUARTET =
      ImmutableList.of("cello", "viola", "violin", "violin");

  private ForcesDetector() {}

  /**
   * Returns who plays from a part. Students mostly play in orchestras: their ensembles of three
   * parts or more are sections, but a quartet, a duet and a solo are for one player each (common
   * practice, no source).
   *
   * @param students whether the players are students
   */
  static Forces of(Score score, PartInfo part, boolean students, ScoreWords words) {
    ImmutableSet<ScoreWords.Kind> meanings = words.read(part.name());
    if (meanings.contains(ScoreWords.Kind.ONE)) {
      return Forces.ONE_PLAYER;
    }
    return meanings.contains(ScoreWords.Kind.SECTION)
            || orchestra(score, words)
            || (students && studentOrchestra(score))
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
                    ? "each part is assumed to be for a section, as in an orchestra; if one player has it, check it for one player"
                    : "each part is assumed to be for one player, as in chamber music; if a section has it, check it for a section");
  }

  private static boolean studentOrchestra(Score score) {
    ImmutableList<String> strings =
        score.parts().stream()
            .filter(PartInfo::isString)
            .map(part -> part.instrument().map(Instrument::id).orElse(""))
            .sorted()
            .collect(ImmutableList.toImmutableList());
    boolean quartet = strings.equals(QUARTET) && score.parts().size() == QUARTET.size();
    return strings.size() >= STUDENTS_STRINGS && !quartet;
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
