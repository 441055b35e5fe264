package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.MarginalCost;
import fingering.audition.RequiredSkill;
import fingering.demand.Skill;
import fingering.page.audition.SheetResult.Asked;
import fingering.page.audition.SheetResult.Offer;
import fingering.page.audition.SheetResult.Shown;
import fingering.plan.Plan;
import fingering.verdict.PlanFigures;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a sheet asks for: where the plans show it, and where else it could be shown. */
public final class AskedRows {
  private static final int OFFERS = 3;

  private final PlannedSheet sheet;

  private AskedRows(PlannedSheet sheet) {
    this.sheet = sheet;
  }

  /** A row for each skill, in the order of the sheet, without advice. */
  public static ImmutableList<Asked> of(PlannedSheet sheet) {
    AskedRows rows = new AskedRows(sheet);
    return sheet.audition().skills().stream()
        .map(rows::row)
        .collect(ImmutableList.toImmutableList());
  }

  private Asked row(RequiredSkill skill) {
    int least = skill.inOnePiece() ? skill.skill().amount() : 1;
    return new Asked(
        SkillWords.withAmount(skill.skill()),
        skill.met(),
        skill.metByCheapest(),
        IntStream.range(0, sheet.ready().size())
            .filter(piece -> skill.shown().get(piece) >= least)
            .mapToObj(piece -> shown(piece, skill))
            .collect(ImmutableList.toImmutableList()),
        skill.marginalCosts().stream()
            .limit(OFFERS)
            .map(offer -> offer(skill.skill(), offer))
            .collect(ImmutableList.toImmutableList()),
        Optional.empty());
  }

  private Shown shown(int piece, RequiredSkill skill) {
    int amount = skill.shown().get(piece);
    return new Shown(
        sheet.number(piece),
        sheet.planned(piece).piece().name(),
        SkillWords.amount(skill.skill(), amount),
        SkillWords.measures(sheet.planned(piece).plan(), skill.skill(), amount));
  }

  private Offer offer(Skill skill, MarginalCost offer) {
    Plan easiest = sheet.planned(offer.piece()).piece().cheapest();
    return new Offer(
        sheet.number(offer.piece()),
        sheet.planned(offer.piece()).piece().name(),
        SkillWords.measures(offer.plan(), skill, offer.amount()),
        PlanFigures.of(offer.plan()).minus(PlanFigures.of(easiest)));
  }
}
