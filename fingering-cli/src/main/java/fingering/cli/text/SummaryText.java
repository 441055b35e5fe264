package fingering.cli.text;

import fingering.plan.Comparison;
import fingering.plan.PlanRemarks;
import java.util.ArrayList;
import java.util.List;

/** The remarks on plans, and the warning below every plan. */
public final class SummaryText {
  /** The warning about strain. */
  public static final String STRAIN =
      "Stretching and long practice can cause pain: stop if it hurts, rest, and ask your teacher or"
          + " a clinician.";

  /** The text below every plan. */
  public static final String CARE = STRAIN + " Your teacher has the last word on every fingering.";

  private SummaryText() {}

  /** The remarks on the plans, a sentence each. */
  static List<String> remarks(Comparison comparison) {
    List<String> remarks = new ArrayList<>(comparison.allRemarks());
    comparison.plans().stream()
        .flatMap(plan -> PlanRemarks.of(plan).stream())
        .distinct()
        .forEach(remarks::add);
    return remarks;
  }
}
