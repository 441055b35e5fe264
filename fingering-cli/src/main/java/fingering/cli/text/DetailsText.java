package fingering.cli.text;

import fingering.cli.option.DetailOptions;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextStyle;
import fingering.plan.Comparison;

/** What is printed about plans on request only. */
public final class DetailsText {
  private DetailsText() {}

  /** Every note of the plans and their costs, each only if the options ask for it. */
  public static String of(
      Comparison comparison,
      ScoringContext scoring,
      DetailOptions detail,
      int columns,
      TextStyle style) {
    return (detail.notes ? ComparisonText.notes(comparison, columns, style) : "")
        + (detail.costs ? CostsText.of(comparison, scoring, columns, style) : "");
  }
}
