package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.player.Player;
import fingering.scoring.rules.SkillGap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A skill that a plan needs and a player has not learned.
 *
 * @param rule id of the rule that charges it
 * @param skill the skill in words: {@code 3rd position}
 * @param notes the notes where it occurs, as indices into the plan's notes, each once, in order
 * @param measures the measures, as printed, in order: {@code 5–6}, {@code 9}
 */
public record PlanSkillGap(
    String rule, String skill, ImmutableList<Integer> notes, ImmutableList<String> measures) {

  /** All skills that a plan needs and a player has not learned, by first occurrence. */
  public static ImmutableList<PlanSkillGap> of(Plan plan, Player player) {
    Map<List<String>, TreeSet<Integer>> moments = new LinkedHashMap<>();
    for (SkillGap skill : SkillGap.of(player, plan.passage().moments(), plan.grips())) {
      moments
          .computeIfAbsent(List.of(skill.rule(), skill.skill()), key -> new TreeSet<>())
          .add(skill.moment());
    }
    return moments.entrySet().stream()
        .map(
            entry ->
                new PlanSkillGap(
                    entry.getKey().get(0),
                    entry.getKey().get(1),
                    notes(plan, entry.getValue()),
                    measures(plan, entry.getValue())))
        .collect(ImmutableList.toImmutableList());
  }

  /** The first note that begins at each of the moments. */
  private static ImmutableList<Integer> notes(Plan plan, TreeSet<Integer> moments) {
    ImmutableList.Builder<Integer> notes = ImmutableList.builder();
    int last = -1;
    for (int i = 0; i < plan.notes().size(); i++) {
      int moment = plan.notes().get(i).moment();
      if (moment != last && moments.contains(moment)) {
        notes.add(i);
        last = moment;
      }
    }
    return notes.build();
  }

  private static ImmutableList<String> measures(Plan plan, TreeSet<Integer> moments) {
    TreeSet<Integer> indices =
        moments.stream()
            .map(moment -> plan.passage().moments().get(moment).place().measureIndex())
            .collect(Collectors.toCollection(TreeSet::new));
    List<String> spans = new ArrayList<>();
    for (int from : indices) {
      if (!indices.contains(from - 1)) {
        int to = from;
        while (indices.contains(to + 1)) {
          to++;
        }
        spans.add(number(plan, from) + (to == from ? "" : "–" + number(plan, to)));
      }
    }
    return ImmutableList.copyOf(spans);
  }

  private static String number(Plan plan, int measureIndex) {
    return plan.passage().measure(measureIndex).orElseThrow().number();
  }
}
