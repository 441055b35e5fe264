package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.RequiredSkill;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The table of what is required: how much the plans show of it, and in which pieces. */
final class AskedTable {
  private final PlannedSheet sheet;

  AskedTable(PlannedSheet sheet) {
    this.sheet = sheet;
  }

  ImmutableList<String> head() {
    return ImmutableList.of(
        "Asked for"
            + (sheet.sheet().inOnePiece() ? " in one piece" : "")
            + (sheet.sheet().excerptsOnly() ? " in the excerpts" : ""),
        "easiest",
        "plans below",
        "in pieces");
  }

  ImmutableList<ImmutableList<String>> rows() {
    return sheet.audition().skills().stream()
        .map(
            skill ->
                ImmutableList.of(
                    SkillWords.withAmount(skill.skill()),
                    amount(skill, skill.amountInCheapest()),
                    amount(skill, skill.amountShown()),
                    pieces(skill)))
        .collect(ImmutableList.toImmutableList());
  }

  private static String amount(RequiredSkill skill, int amount) {
    return amount == 0 ? "missing" : SkillWords.amount(skill.skill(), amount);
  }

  /** The numbers of the pieces that show some of a skill, or all of it if one piece must. */
  private String pieces(RequiredSkill skill) {
    int least = skill.inOnePiece() ? skill.skill().amount() : 1;
    return IntStream.range(0, sheet.ready().size())
        .filter(piece -> skill.shown().get(piece) >= least)
        .mapToObj(piece -> Integer.toString(sheet.number(piece)))
        .collect(Collectors.joining(", "));
  }
}
