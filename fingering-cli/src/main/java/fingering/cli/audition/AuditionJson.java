package fingering.cli.audition;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.audition.MarginalCost;
import fingering.audition.PlannedPiece;
import fingering.audition.RequiredSkill;
import fingering.cli.json.DemandsJson;
import fingering.cli.json.PlanJson;
import fingering.cli.json.ScoringJson;
import fingering.cli.student.ScoringContext;

/** An audition sheet with its plans, as JSON. */
public final class AuditionJson {
  private static final String FORMAT = "fingering-audition";
  private static final int VERSION = 1;

  private AuditionJson() {}

  public static String of(PlannedSheet sheet, ScoringContext scoring) {
    ObjectNode root =
        JsonNodeFactory.instance
            .objectNode()
            .put("format", FORMAT)
            .put("version", VERSION)
            .put("title", sheet.sheet().title())
            .put("instrument", sheet.instrument().id())
            .put("tuning", sheet.instrument().tuning())
            .put("size", sheet.instrument().size());
    ScoringJson.fill(root, scoring);
    root.put("counted", sheet.sheet().inOnePiece() ? "in-one-piece" : "together")
        .put("shownIn", sheet.sheet().excerptsOnly() ? "excerpts" : "all")
        .put("met", sheet.audition().met())
        .put("extra", sheet.audition().extraCost());
    ArrayNode required = root.putArray("asked");
    sheet.audition().skills().forEach(skill -> skill(required.addObject(), skill, sheet));
    ArrayNode pieces = root.putArray("pieces");
    for (int i = 0; i < sheet.ready().size(); i++) {
      piece(pieces.addObject(), i, sheet, scoring);
    }
    ArrayNode problems = root.putArray("problems");
    sheet
        .problems()
        .forEach(one -> problems.addObject().put("line", one.line()).put("says", one.message()));
    return PlanJson.text(root);
  }

  private static void skill(ObjectNode node, RequiredSkill skill, PlannedSheet sheet) {
    node.put("demand", skill.skill().text())
        .put("amount", skill.skill().amount())
        .put("inOnePiece", skill.inOnePiece())
        .put("cheapest", skill.amountInCheapest())
        .put("planned", skill.amountShown())
        .put("met", skill.met());
    ArrayNode shown = node.putArray("pieces");
    for (int i = 0; i < sheet.ready().size(); i++) {
      if (skill.cheapest().get(i) > 0 || skill.shown().get(i) > 0) {
        shown
            .addObject()
            .put("piece", sheet.number(i))
            .put("cheapest", skill.cheapest().get(i))
            .put("planned", skill.shown().get(i));
      }
    }
    ArrayNode offers = node.putArray("offers");
    for (MarginalCost offer : skill.marginalCosts()) {
      ObjectNode entry =
          offers
              .addObject()
              .put("piece", sheet.number(offer.piece()))
              .put("amount", offer.amount())
              .put("extra", offer.extraCost());
      DemandsJson.notes(entry.putArray("notes"), offer.plan(), skill.skill());
    }
  }

  private static void piece(ObjectNode node, int i, PlannedSheet sheet, ScoringContext scoring) {
    PlannedPiece planned = sheet.planned(i);
    node.put("number", sheet.number(i))
        .put("line", sheet.ready().get(i).entry().line())
        .put("kind", sheet.ready().get(i).entry().scale() ? "scale" : "excerpt")
        .put("name", planned.piece().name())
        .put("cheapest", planned.piece().cheapest().total())
        .put("extra", planned.extraCost());
    sheet.written(i).ifPresent(file -> node.put("written", file.toString()));
    node.set("plan", PlanJson.document(planned.plan(), planned.piece().planner()::plan, scoring));
  }
}
