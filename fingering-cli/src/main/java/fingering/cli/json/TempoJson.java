package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.cli.text.TempoText;
import fingering.plan.Plan;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import fingering.tempo.TempoLimit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** The highest comfortable tempo of a plan, as JSON. */
final class TempoJson {
  private static final int DECIMALS = 3;
  private static final int MICRO_DECIMALS = 6;

  private TempoJson() {}

  /** Adds the object {@code comfortableTempo} to a plan. */
  static void fill(ObjectNode node, Plan plan, PlayerSpeed level) {
    ComfortableTempo comfortable = ComfortableTempo.of(plan, level);
    ObjectNode tempo =
        node.putObject("comfortableTempo")
            .put("level", level.name())
            .put("marked", comfortable.marked().toString());
    comfortable.tempo().ifPresent(mark -> tempo.put("tempo", mark.toString()));
    comfortable.factor().ifPresent(factor -> tempo.put("factor", rounded(factor)));
    ArrayNode limits = tempo.putArray("limits");
    comfortable
        .tightest(TempoText.LIMITS)
        .forEach(limit -> limit(limits.addObject(), limit, note(plan, limit)));
  }

  private static void limit(ObjectNode node, TempoLimit limit, int note) {
    node.put("measures", limit.measures())
        .put("measure", limit.place().measure())
        .put("beat", new BigDecimal(limit.place().beatText()))
        .put("note", note)
        .put("cause", limit.cause().id())
        .put("says", limit.text())
        .put("needed", BigDecimal.valueOf(limit.neededMicros(), MICRO_DECIMALS))
        .put("free", BigDecimal.valueOf(limit.freeMicros(), MICRO_DECIMALS))
        .put("factor", rounded(limit.factor()))
        .put("marked", limit.marked().toString());
    limit.tempo().ifPresent(mark -> node.put("tempo", mark.toString()));
  }

  /** The index of the first note of the moment. */
  private static int note(Plan plan, TempoLimit limit) {
    int index = 0;
    while (plan.notes().get(index).moment() != limit.moment()) {
      index++;
    }
    return index;
  }

  private static BigDecimal rounded(double factor) {
    return BigDecimal.valueOf(factor).setScale(DECIMALS, RoundingMode.DOWN);
  }
}
