package fingering.cli.text;

import com.google.common.primitives.ImmutableDoubleArray;
import fingering.learning.Agreement;
import fingering.learning.LearnedWeights;
import fingering.learning.TrainingExample;
import fingering.scoring.CostRule;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instrument.HandKind;
import fingering.userfile.UserText;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Learned weights as a file that can be read again, with comments on how they were learned. */
public final class WeightsText {
  private static final int NUMBERS_A_LINE = 16;

  private final StringBuilder text = new StringBuilder();

  private WeightsText() {}

  /**
   * The text of a weights file.
   *
   * @param start the name of the weights that learning started from
   */
  public static String of(LearnedWeights learned, String start) {
    WeightsText file = new WeightsText();
    file.head(learned, start);
    file.agreements(learned);
    file.weights(learned);
    return file.text.toString();
  }

  private void head(LearnedWeights learned, String start) {
    comment("Points per unit of each rule, learned from printed fingerings:");
    for (TrainingExample example : learned.examples()) {
      int notes = example.passage().notes().size();
      comment("  %s: %d notes, %d fingered", example.name(), notes, example.fingered());
    }
    comment(
        "%s. Start: %s; strength %s. The same scores always give the same weights.",
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
    comment("Agreement of the free plan with the print, mean of the pieces:");
    comment("  %-36s string  string and finger", "");
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
    comment("  %-36s %-7s %s", when, string, share(agreement.stringAndFinger()));
  }

  private static String share(double share) {
    return String.format(Locale.ROOT, "%.3f", share);
  }

  private void weights(LearnedWeights learned) {
    Map<String, Long> points = learned.weights().points();
    int width = points.keySet().stream().mapToInt(String::length).max().orElse(0);
    Map<String, String> units =
        StandardRules.all().stream().collect(Collectors.toMap(CostRule::id, CostRule::unit));
    points.forEach(
        (key, value) -> {
          String rule = key.substring(key.indexOf('.') + 1);
          text.append(
              String.format(
                  Locale.ROOT,
                  "%-" + (width + 1) + "s %-6d # %s\n",
                  key + ":",
                  value,
                  units.getOrDefault(rule, "point")));
        });
    learned.weights().habit().networks().forEach(this::network);
  }

  private void network(HandKind hand, ImmutableDoubleArray numbers) {
    text.append('\n').append(Weights.networkKey(hand)).append(": [");
    for (int i = 0; i < numbers.length(); i++) {
      text.append(i == 0 ? "" : ",")
          .append(i % NUMBERS_A_LINE == 0 ? "\n  " : " ")
          .append(BigDecimal.valueOf(numbers.get(i)).stripTrailingZeros().toPlainString());
    }
    text.append("]\n");
  }

  private void comment(String words, Object... values) {
    text.append(UserText.comment(String.format(Locale.ROOT, words, values)));
  }
}
