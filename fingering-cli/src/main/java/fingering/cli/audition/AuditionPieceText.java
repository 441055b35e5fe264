package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.PlannedPiece;
import fingering.cli.student.ScoringContext;
import fingering.cli.student.Student;
import fingering.cli.text.StudentsText;
import fingering.cli.text.TempoText;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.plan.PlanRemarks;
import fingering.plan.Stay;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.TempoLimit;
import java.util.List;
import java.util.stream.Collectors;

/** A planned piece of a sheet in brief: tempo, positions, cost, and the skills it shows. */
final class AuditionPieceText {
  private static final int LISTED = 12;

  private final PlannedSheet sheet;
  private final ScoringContext scoring;
  private final int piece;

  AuditionPieceText(PlannedSheet sheet, ScoringContext scoring, int piece) {
    this.sheet = sheet;
    this.scoring = scoring;
    this.piece = piece;
  }

  /** The paragraphs below the name of the piece. */
  ImmutableList<String> paragraphs() {
    PlannedPiece planned = sheet.planned(piece);
    Plan plan = planned.plan();
    Passage passage = plan.passage();
    ImmutableList.Builder<String> paragraphs = ImmutableList.builder();
    paragraphs.add(range(passage) + ", " + TempoText.mark(passage.tempo()) + "; " + tempo(plan));
    paragraphs.add(stays(plan));
    paragraphs.add(cost(planned));
    paragraphs.addAll(shown(plan));
    scoring.students().known().forEach(student -> paragraphs.addAll(unlearned(plan, student)));
    passage.remarks().forEach(remark -> paragraphs.add("Note: " + remark));
    PlanRemarks.of(plan).forEach(remark -> paragraphs.add("Note: " + remark));
    sheet.written(piece).ifPresent(file -> paragraphs.add("written to " + file));
    return paragraphs.build();
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

  /** The positions, in order. */
  private static String stays(Plan plan) {
    ImmutableList<Stay> stays = plan.stays();
    if (stays.isEmpty()) {
      return "open strings only";
    }
    int more = stays.size() - LISTED;
    return stays.stream()
            .limit(LISTED)
            .map(stay -> stay.position().display() + " position m. " + stay.measures())
            .collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  private static String cost(PlannedPiece planned) {
    String points = AuditionText.count(planned.plan().total(), "point");
    return planned.extraCost() == 0
        ? points + ", the cheapest plan"
        : "%s, %d more than the cheapest plan (%s)"
            .formatted(points, planned.extraCost(), stays(planned.piece().cheapest()));
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
