package fingering.cli.audition;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.audition.PlannedPiece;
import fingering.audition.RequiredSkill;
import fingering.demand.ShowPosition;
import fingering.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Whether an audition shows what is required, and how, in words that a pupil understands. */
final class AuditionVerdict {
  private final PlannedSheet sheet;

  private AuditionVerdict(PlannedSheet sheet) {
    this.sheet = sheet;
  }

  /** The sentences, the answer first. */
  static ImmutableList<String> of(PlannedSheet sheet) {
    return new AuditionVerdict(sheet).sentences();
  }

  /** Whether the plan of a piece costs more than its easiest one. */
  static boolean changed(PlannedPiece planned) {
    return planned.extraCost() > 0;
  }

  private ImmutableList<String> sentences() {
    ImmutableList.Builder<String> sentences = ImmutableList.builder();
    ImmutableList<RequiredSkill> skills = sheet.audition().skills();
    List<RequiredSkill> unmet = skills.stream().filter(skill -> !skill.met()).toList();
    unmet.forEach(skill -> sentences.add(unmet(skill)));
    if (skills.isEmpty()) {
      sentences.add("Nothing special is required: every piece keeps its easiest fingering.");
    } else if (unmet.size() < skills.size()) {
      sentences.add(shown(unmet.isEmpty() ? "Everything asked for" : "Everything else"));
    }
    int left = sheet.problems().size();
    if (left > 0) {
      sentences.add(
          "%d of %d pieces cannot be planned: see the end."
              .formatted(left, sheet.sheet().entries().size()));
    }
    return sentences.build();
  }

  private String unmet(RequiredSkill skill) {
    int most = skill.amountShown();
    String words = SkillWords.withAmount(skill.skill());
    return words.substring(0, 1).toUpperCase(Locale.ROOT)
        + words.substring(1)
        + " cannot be shown in "
        + (skill.inOnePiece() ? "one of these pieces" : "these pieces")
        + (skill.marginalCosts().isEmpty() ? "" : " together with the rest")
        + (most == 0 ? "" : ", only " + SkillWords.amount(skill.skill(), most))
        + ": choose another scale or excerpt, or ask for less.";
  }

  private String shown(String what) {
    List<Integer> changed =
        IntStream.range(0, sheet.ready().size())
            .filter(piece -> changed(sheet.planned(piece)))
            .boxed()
            .toList();
    if (changed.isEmpty()) {
      return what + " is shown with the easiest fingering of every piece.";
    }
    return what
        + " is shown if "
        + joined(changed.stream().map(this::change).toList())
        + (changed.size() < sheet.ready().size()
            ? "; the other pieces keep their easiest fingering."
            : ".");
  }

  /** How a piece differs from its easiest plan: {@code F major is played in 2nd position}. */
  private String change(int piece) {
    Plan plan = sheet.planned(piece).plan();
    List<RequiredSkill> added =
        sheet.audition().skills().stream()
            .filter(skill -> skill.shown().get(piece) > skill.cheapest().get(piece))
            .toList();
    String name = name(piece);
    if (added.isEmpty()) {
      return name + " leaves its easiest fingering";
    }
    if (added.get(0).skill() instanceof ShowPosition one && plan.stays().size() == 1) {
      return name + " is played in " + one.position().display() + " position";
    }
    return name
        + " shows "
        + joined(
            added.stream()
                .map(
                    skill ->
                        SkillWords.withoutAmount(skill.skill())
                            + " in "
                            + SkillWords.measures(plan, skill.skill(), skill.shown().get(piece)))
                .toList());
  }

  /** The name of a piece; a scale without its octaves, unless the sheet has it more than once. */
  private String name(int piece) {
    String name = sheet.planned(piece).piece().name();
    String plain = Splitter.on(", ").splitToList(name).get(0);
    boolean once =
        sheet.audition().pieces().stream()
                .filter(other -> other.piece().name().startsWith(plain))
                .count()
            == 1;
    return sheet.ready().get(piece).entry().scale() && once ? plain : name;
  }

  private static String joined(List<String> words) {
    List<String> all = new ArrayList<>(words);
    int last = all.size() - 1;
    return last < 1
        ? String.join("", all)
        : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
  }
}
