package fingering.cli.text;

import fingering.learning.Agreement;
import fingering.learning.LearnedWeights;
import fingering.learning.TrainingExample;
import fingering.scoring.CostRule;
import fingering.scoring.rules.StandardRules;
import java.util.Locale;

/** Learned weights as a file that can be read again, with remarks on how they were had. */
public final class WeightsText {
  private final StringBuilder text = new StringBuilder();

  private WeightsText() {}

  /**
   * The text of a weights file.
   *
   * @param start what to call the weights that learning started from
   */
  public static String of(LearnedWeights learned, String start) {
    WeightsText file = new WeightsText();
    file.head(learned, start);
    file.agreements(learned);
    file.weights(learned);
    return file.text.toString();
  }

  private void head(LearnedWeights learned, String start) {
    remark("What a unit of each rule costs, in points, learned from printed fingerings:");
    for (TrainingExample example : learned.examples()) {
      int notes = example.passage().notes().size();
      remark("  %s: %d notes, %d fingered", example.name(), notes, example.fingered());
    }
    remark(
        "%s. Start: %s; strength %s. Nothing was left to chance.",
        learned.pieces() == 1 ? "One piece" : learned.pieces() + " pieces",
        start,
        strength(learned.strength()));
    text.append('\n');
  }

  private static String strength(double strength) {
    return strength == Math.rint(strength)
        ? Long.toString((long) strength)
        : Double.toString(strength);
  }

  private void agreements(LearnedWeights learned) {
    remark("Agreement of the free plan with the print, mean of the pieces:");
    remark("  %-36s string  string and finger", "");
    agreement("before", learned.before());
    agreement("after, on these very pieces", learned.after());
    learned
        .leftOut()
        .ifPresent(leftOut -> agreement("each piece, learned from the others", leftOut));
    text.append('\n');
  }

  private void agreement(String when, Agreement agreement) {
    String string =
        agreement.string().isPresent() ? share(agreement.string().getAsDouble()) : "none";
    remark("  %-36s %-7s %s", when, string, share(agreement.stringAndFinger()));
  }

  private static String share(double share) {
    return String.format(Locale.ROOT, "%.3f", share);
  }

  private void weights(LearnedWeights learned) {
    int width = StandardRules.all().stream().mapToInt(rule -> rule.id().length()).max().orElse(0);
    for (CostRule rule : StandardRules.all()) {
      text.append(
          String.format(
              Locale.ROOT,
              "%-" + width + "s = %-6d # %s\n",
              rule.id(),
              learned.weights().of(rule),
              rule.unit()));
    }
  }

  /** A line of remark; a name cannot break out of it. */
  private void remark(String words, Object... values) {
    String line = String.format(Locale.ROOT, words, values);
    text.append("# ").append(line.replaceAll("\\p{Cntrl}", "?")).append('\n');
  }
}
