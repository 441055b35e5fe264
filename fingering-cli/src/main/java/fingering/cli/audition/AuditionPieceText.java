package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.PlannedPiece;
import fingering.cli.option.ScoringContext;
import fingering.cli.option.Student;
import fingering.cli.text.SummaryText;
import fingering.cli.text.TempoText;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.plan.PlanRemarks;
import fingering.plan.PlanSkillGap;
import fingering.plan.Stay;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.TempoLimit;
import java.util.List;
import java.util.stream.Collectors;

/** A planned piece of a sheet in short: how it goes, where the hand is, what it shows. */
final class AuditionPieceText {
  private static final int STAYS = 12;

  private final PlannedSheet answer;
  private final ScoringContext charging;
  private final int piece;

  AuditionPieceText(PlannedSheet answer, ScoringContext charging, int piece) {
    this.answer = answer;
    this.charging = charging;
    this.piece = piece;
  }

  /** The paragraphs below its name. */
  ImmutableList<String> told() {
    PlannedPiece planned = answer.planned(piece);
    Plan plan = planned.plan();
    Passage passage = plan.passage();
    ImmutableList.Builder<String> told = ImmutableList.builder();
    told.add(range(passage) + ", " + TempoText.mark(passage.tempo()) + "; " + tempo(plan));
    told.add(stays(plan));
    told.add(cost(planned));
    told.addAll(shown(plan));
    charging.students().known().forEach(student -> told.addAll(unlearned(plan, student)));
    passage.remarks().forEach(remark -> told.add("Note: " + remark));
    PlanRemarks.of(plan).forEach(remark -> told.add("Note: " + remark));
    answer.written(piece).ifPresent(file -> told.add("written to " + file));
    return told.build();
  }

  private static String range(Passage passage) {
    List<Measure> measures = passage.measures();
    String from = measures.get(0).number();
    String to = measures.get(measures.size() - 1).number();
    return "m. " + (from.equals(to) ? from : from + "–" + to);
  }

  private String tempo(Plan plan) {
    ComfortableTempo tempo = ComfortableTempo.of(plan, charging.level());
    if (tempo.tempo().isPresent() && tempo.wellAbove()) {
      return "comfortable " + TempoText.wellAbove(tempo.marked());
    }
    return tempo
        .tempo()
        .map(mark -> "comfortable up to " + TempoText.mark(mark) + limit(tempo))
        .orElse("comfortable at any tempo");
  }

  /** What limits a tempo most, where it is below the one asked for. */
  private static String limit(ComfortableTempo tempo) {
    TempoLimit tightest = tempo.tightest(1).get(0);
    return tempo.exceeded() ? " only; limit: " + TempoText.limit(tightest, tempo.marked()) : "";
  }

  /** Where the hand is, in order. */
  private static String stays(Plan plan) {
    ImmutableList<Stay> stays = plan.stays();
    if (stays.isEmpty()) {
      return "open strings only";
    }
    int untold = stays.size() - STAYS;
    return stays.stream()
            .limit(STAYS)
            .map(stay -> stay.position().display() + " position m. " + stay.measures())
            .collect(Collectors.joining(", "))
        + (untold > 0 ? " and " + untold + " more" : "");
  }

  private static String cost(PlannedPiece planned) {
    String points = AuditionText.count(planned.plan().total(), "point");
    return planned.extraCost() == 0
        ? points + ", as its cheapest plan"
        : "%s, %d more than its cheapest plan (%s)"
            .formatted(points, planned.extraCost(), stays(planned.piece().cheapest()));
  }

  private List<String> shown(Plan plan) {
    return answer.audition().skills().stream()
        .filter(skill -> skill.shown().get(piece) > 0)
        .filter(skill -> !skill.inOnePiece() || skill.shown().get(piece) >= skill.skill().amount())
        .map(
            skill ->
                "shows "
                    + SkillWords.shown(skill.skill())
                    + ": "
                    + SkillWords.amount(skill.skill(), skill.shown().get(piece))
                    + ", "
                    + SkillWords.measures(plan, skill.skill(), skill.shown().get(piece)))
        .toList();
  }

  /** What is new to a student; nothing where nothing is. */
  private ImmutableList<String> unlearned(Plan plan, Student student) {
    String told =
        PlanSkillGap.of(plan, student.player()).stream()
            .map(one -> one.what() + " in m. " + SummaryText.list(one.measures()))
            .collect(Collectors.joining("; "));
    return told.isEmpty()
        ? ImmutableList.of()
        : ImmutableList.of(
            "new to "
                + (charging.students().several() ? student.file() : "this player")
                + ": "
                + told);
  }
}
