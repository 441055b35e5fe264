package fingering.plan.marks;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.writing.ScoreExcerpt;
import fingering.plan.Plan;

/**
 * A copy of a score with the fingers of a plan, and with the slurs that are changed for it.
 *
 * @param extent what is copied
 * @param sparing whether only what a player needs is marked
 * @param strings how strings are marked
 */
public record MarkedCopy(Extent extent, boolean sparing, StringSigns strings) {
  /** What is copied. */
  public enum Extent {
    /** The whole score. */
    SCORE,
    /** The part of the plan. */
    PART,
    /** The measures of the plan in its part. */
    EXCERPT;

    /** Returns how strings are marked unless the user chooses otherwise. */
    public StringSigns usualStrings() {
      return this == SCORE ? StringSigns.ELEMENTS : StringSigns.WORDS;
    }
  }

  /**
   * The copy as MusicXML.
   *
   * @param score the text of the score that the plan was made from
   * @throws UnreadableScoreException if the text is not a well-formed partwise score
   */
  public String of(String score, Plan plan) {
    String marked =
        ScoreMarker.mark(score, PlanMarks.of(plan, sparing, strings), plan.passage().slurs());
    Passage passage = plan.passage();
    int part = passage.notes().get(0).address().part();
    ImmutableList<Measure> measures = passage.measures();
    return switch (extent) {
      case SCORE -> marked;
      case PART -> ScoreExcerpt.part(marked, part);
      case EXCERPT ->
          ScoreExcerpt.measures(
              marked, part, measures.get(0).index(), measures.get(measures.size() - 1).index());
    };
  }
}
