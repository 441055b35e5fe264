package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.PlannedPiece;
import fingering.cli.student.ScoringContext;
import fingering.cli.student.Student;
import fingering.cli.text.StudentsText;
import fingering.cli.text.TempoText;
import fingering.cli.text.Whereabouts;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.plan.PlanRemarks;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.TempoLimit;
import java.util.List;

/** A planned piece of a sheet in brief: positions, remarks, the skills it shows, and its cost. */
final class AuditionPieceText {
  private final PlannedSheet sheet;
  private final ScoringContext scoring;
  private final int piece;

  AuditionPieceText(PlannedSheet sheet, ScoringContext scoring, int piece) {
    this.sheet = sheet;
    this.scoring = scoring;
    this.piece = piece;
  }

  /**
   * The piece with its positions; if it does not keep its easiest fingering, also those of that.
   */
  String line() {
    Passage passage = sheet.planned(piece).plan().passage();
    boolean excerpt = !sheet.ready().get(piece).entry().scale();
    return sheet.title(piece) + (excerpt ? ", " + range(passage) : "") + ": " + positions();
  }

  /** The positions of the piece. */
  String positions() {
    PlannedPiece planned = sheet.planned(piece);
    return where(planned.plan())
        + (AuditionVerdict.changed(planned)
            ? " (easiest: " + where(planned.piece().cheapest()) + ")"
            : "");
  }

  private static String where(Plan plan) {
    return plan.stays().size() == 1
        ? plan.stays().get(0).position().display() + " position throughout"
        : Whereabouts.of(plan);
  }

  /** What the player should know about the piece: may be empty. */
  ImmutableList<String> remarks() {
    Plan plan = sheet.planned(piece).plan();
    ImmutableList.Builder<String> paragraphs = ImmutableList.builder();
    if (ComfortableTempo.of(plan, scoring.level()).exceeded()) {
      paragraphs.add(mark(plan) + "; " + tempo(plan));
    }
    scoring.students().known().forEach(student -> paragraphs.addAll(unlearned(plan, student)));
    plan.passage().remarks().forEach(remark -> paragraphs.add("Note: " + remark));
    PlanRemarks.of(plan).forEach(remark -> paragraphs.add("Note: " + remark));
    sheet.written(piece).ifPresent(file -> paragraphs.add("written to " + file));
    return paragraphs.build();
  }

  /** Which required skills the piece shows, and its tempo. */
  ImmutableList<String> shown() {
    Plan plan = sheet.planned(piece).plan();
    ImmutableList.Builder<String> paragraphs = ImmutableList.builder();
    paragraphs.addAll(shown(plan));
    ComfortableTempo comfortable = ComfortableTempo.of(plan, scoring.level());
    if (!comfortable.exceeded()) {
      paragraphs.add(mark(plan) + "; " + tempo(plan));
    }
    return paragraphs.build();
  }

  /** The points of the piece. */
  String cost() {
    PlannedPiece planned = sheet.planned(piece);
    String points = AuditionText.count(planned.plan().total(), "point");
    return planned.extraCost() == 0
        ? points + ", the easiest plan"
        : "%s, %d more than the easiest plan".formatted(points, planned.extraCost());
  }

  private static String mark(Plan plan) {
    return TempoText.mark(plan.passage().tempo());
  }

  private static String range(Passage passage) {
    List<Measure> measures = passage.measures();
    String from = measures.get(0).number();
    String to = measures.get(measures.size() - 1).number();
    return "m. " + (from.equals(to) ? from : from + "–" + to);
  }

  private String tempo(Plan plan) {
    ComfortableTempo tempo = ComfortableTempo.of(plan, scoring.level());
    if (tempo.tempo().isPresent() && tempo.wellAbove()) {
      return "comfortable " + TempoText.wellAbove(tempo.marked());
    }
    return tempo
        .tempo()
        .map(
            mark ->
                (tempo.exceeded() ? "comfortable only up to " : "comfortable up to ")
                    + TempoText.mark(mark)
                    + limit(tempo))
        .orElse("comfortable at any tempo");
  }

  /** What limits the tempo most, if it is below the planned one. */
  private static String limit(ComfortableTempo tempo) {
    TempoLimit tightest = tempo.tightest(1).get(0);
    return tempo.exceeded() ? "; limit: " + TempoText.limit(tightest, tempo.marked()) : "";
  }

  private List<String> shown(Plan plan) {
    return sheet.audition().skills().stream()
        .filter(skill -> skill.shown().get(piece) > 0)
        .filter(skill -> !skill.inOnePiece() || skill.shown().get(piece) >= skill.skill().amount())
        .map(
            skill ->
                "shows "
                    + SkillWords.withoutAmount(skill.skill())
                    + ": "
                    + SkillWords.amount(skill.skill(), skill.shown().get(piece))
                    + ", "
                    + SkillWords.measures(plan, skill.skill(), skill.shown().get(piece)))
        .toList();
  }

  /** A sentence on what is new to a student; empty if nothing is. */
  private ImmutableList<String> unlearned(Plan plan, Student student) {
    String skills = StudentsText.newSkills(plan, student);
    return skills.isEmpty()
        ? ImmutableList.of()
        : ImmutableList.of(
            "new to "
                + (scoring.students().several() ? student.file() : "this player")
                + ": "
                + skills);
  }
}
