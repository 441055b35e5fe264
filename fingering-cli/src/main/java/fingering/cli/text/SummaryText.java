package fingering.cli.text;

import fingering.plan.Comparison;
import fingering.plan.PlanRemarks;
import fingering.tempo.PlayerSpeed;
import fingering.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;

/** The verdict with the remarks on plans, as sentences; and the warning below every plan. */
public final class SummaryText {
  /** The warning about strain. */
  public static final String STRAIN =
      "Stretching and long practice can cause pain: stop if it hurts, rest, and ask your teacher or"
          + " a clinician.";

  /** The text below every plan. */
  public static final String CARE = STRAIN + " Your teacher has the last word on every fingering.";

  private SummaryText() {}

  /** The sentences of the verdict, and further remarks. */
  static List<String> sentences(Comparison comparison, PlayerSpeed speed) {
    List<String> sentences =
        new ArrayList<>(VerdictText.of(comparison, speed, Verdict.of(comparison, speed)));
    sentences.addAll(comparison.allRemarks());
    comparison.plans().stream()
        .flatMap(plan -> PlanRemarks.of(plan).stream())
        .forEach(sentences::add);
    return sentences;
  }
}
