package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.base.Ascii;
import fingering.cli.text.VerdictText;
import fingering.plan.Comparison;
import fingering.tempo.PlayerSpeed;
import fingering.verdict.Verdict;

/** The verdict on plans, as JSON. */
final class VerdictJson {
  private VerdictJson() {}

  /** Adds the object {@code verdict}. */
  static void fill(ObjectNode node, Comparison comparison, PlayerSpeed speed) {
    Verdict verdict = Verdict.of(comparison, speed);
    ObjectNode entry = node.putObject("verdict").put("plan", verdict.plan().name());
    verdict.rival().ifPresent(rival -> entry.put("rival", rival.name()));
    entry
        .put("reason", Ascii.toLowerCase(verdict.reason().name()).replace('_', '-'))
        .put("close", verdict.close());
    ArrayNode sentences = entry.putArray("sentences");
    VerdictText.of(comparison, speed, verdict).forEach(sentences::add);
  }
}
