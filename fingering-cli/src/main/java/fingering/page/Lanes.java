package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.music.NoteAddress;
import fingering.page.staff.Lane;
import fingering.page.staff.Lane.Mark;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.RomanNumeral;
import java.util.List;

/** The lanes of marks that the strip shows for plans. */
final class Lanes {
  private Lanes() {}

  /** The lanes of plans, each with a letter if there are several. */
  static ImmutableList<Lane> of(Comparison comparison) {
    boolean alone = comparison.plans().size() == 1;
    ImmutableList.Builder<Lane> lanes = ImmutableList.builder();
    for (int i = 0; i < comparison.plans().size(); i++) {
      Plan plan = comparison.plans().get(i);
      String key = alone ? "" : String.valueOf((char) ('A' + i));
      lanes.add(new Lane(key, plan.name(), marks(comparison, plan)));
    }
    return lanes.build();
  }

  /** The letter, place and name of each of several plans; empty if there is only one. */
  static ImmutableList<String> key(List<Lane> lanes) {
    return lanes.size() < 2
        ? ImmutableList.of()
        : lanes.stream()
            .map(
                lane ->
                    lane.equals(lanes.get(0))
                        ? text("key.above", lane.key(), lane.name())
                        : text("key.below", lane.key(), lane.name()))
            .collect(ImmutableList.toImmutableList());
  }

  /** What the signs in the music mean. */
  static String signs(List<Lane> lanes) {
    return text("signs.all")
        + (lanes.size() > 1 ? " " + text("signs.differs") : "")
        + (any(lanes, "!") ? " " + text("signs.outside") : "")
        + (any(lanes, "°") ? " " + text("signs.natural") : "")
        + (any(lanes, "◇") ? " " + text("signs.artificial") : "");
  }

  private static boolean any(List<Lane> lanes, String sign) {
    return lanes.stream()
        .flatMap(lane -> lane.marks().values().stream())
        .anyMatch(mark -> mark.finger().contains(sign));
  }

  private static ImmutableMap<NoteAddress, Mark> marks(Comparison comparison, Plan plan) {
    ImmutableMap.Builder<NoteAddress, Mark> marks = ImmutableMap.builder();
    int string = 0;
    for (int i = 0; i < plan.notes().size(); i++) {
      PlannedNote note = plan.notes().get(i);
      int now = note.placement().string();
      marks.put(
          note.note().address(),
          new Mark(
              PrintedSigns.finger(note.placement()) + (note.outside() ? "!" : ""),
              RomanNumeral.of(now),
              now != string,
              note.placement().frame().position().display(),
              PrintedSigns.shift(plan, note),
              comparison.differs(i)));
      string = now;
    }
    return marks.buildKeepingLast();
  }
}
