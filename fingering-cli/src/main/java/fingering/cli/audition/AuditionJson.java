package fingering.cli.audition;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.audition.MarginalCost;
import fingering.audition.PlannedPiece;
import fingering.audition.RequiredSkill;
import fingering.cli.json.DemandsJson;
import fingering.cli.json.PlanJson;
import fingering.cli.option.ScoringContext;

/** A sheet with its plans, as JSON. */
public final class AuditionJson {
  private static final String FORMAT = "fingering-audition";
  private static final int VERSION = 1;

  private AuditionJson() {}

  public static String of(PlannedSheet answer, ScoringContext charging) {
    ObjectNode root =
        JsonNodeFactory.instance
            .objectNode()
            .put("format", FORMAT)
            .put("version", VERSION)
            .put("title", answer.sheet().title())
            .put("instrument", answer.instrument().id())
            .put("tuning", answer.instrument().tuning())
            .put("size", answer.instrument().size());
    charging.fill(root);
    root.put("counted", answer.sheet().inOnePiece() ? "in-one-piece" : "together")
        .put("shownIn", answer.sheet().excerptsOnly() ? "excerpts" : "all")
        .put("met", answer.audition().met())
        .put("extra", answer.audition().extraCost());
    ArrayNode asked = root.putArray("asked");
    answer.audition().skills().forEach(skill -> skill(asked.addObject(), skill, answer));
    ArrayNode pieces = root.putArray("pieces");
    for (int i = 0; i < answer.ready().size(); i++) {
      piece(pieces.addObject(), i, answer, charging);
    }
    ArrayNode problems = root.putArray("problems");
    answer
        .problems()
        .forEach(one -> problems.addObject().put("line", one.line()).put("says", one.says()));
    return PlanJson.text(root);
  }

  private static void skill(ObjectNode node, RequiredSkill skill, PlannedSheet answer) {
    node.put("demand", skill.skill().text())
        .put("amount", skill.skill().amount())
        .put("inOnePiece", skill.inOnePiece())
        .put("cheapest", skill.amountInCheapest())
        .put("planned", skill.amountShown())
        .put("met", skill.met());
    ArrayNode shown = node.putArray("pieces");
    for (int i = 0; i < answer.ready().size(); i++) {
      if (skill.cheapest().get(i) > 0 || skill.shown().get(i) > 0) {
        shown
            .addObject()
            .put("piece", answer.number(i))
            .put("cheapest", skill.cheapest().get(i))
            .put("planned", skill.shown().get(i));
      }
    }
    ArrayNode offers = node.putArray("offers");
    for (MarginalCost offer : skill.marginalCosts()) {
      ObjectNode entry =
          offers
              .addObject()
              .put("piece", answer.number(offer.piece()))
              .put("amount", offer.amount())
              .put("extra", offer.extraCost());
      DemandsJson.notes(entry.putArray("notes"), offer.plan(), skill.skill());
    }
  }

  private static void piece(ObjectNode node, int i, PlannedSheet answer, ScoringContext charging) {
    PlannedPiece planned = answer.planned(i);
    node.put("number", answer.number(i))
        .put("line", answer.ready().get(i).entry().line())
        .put("kind", answer.ready().get(i).entry().scale() ? "scale" : "excerpt")
        .put("name", planned.piece().name())
        .put("cheapest", planned.piece().cheapest().total())
        .put("extra", planned.extraCost());
    answer.written(i).ifPresent(file -> node.put("written", file.toString()));
    node.set("plan", PlanJson.alone(planned.plan(), charging));
  }
}
