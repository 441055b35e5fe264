package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.music.NoteAddress;
import fingering.page.staff.Lane;
import fingering.page.staff.Lane.Mark;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.RomanNumeral;

/** The lanes of marks that the strip shows for plans. */
final class Lanes {
  private Lanes() {}

  /** The letter of the plan with that index. */
  static String key(int plan) {
    return String.valueOf((char) ('A' + plan));
  }

  /** Letter and name of the plan with that index: {@code A (1st position)}. */
  static String name(int plan, String name) {
    return key(plan) + " (" + name + ")";
  }

  static ImmutableList<Lane> of(Comparison comparison) {
    ImmutableList.Builder<Lane> lanes = ImmutableList.builder();
    for (int i = 0; i < comparison.plans().size(); i++) {
      Plan plan = comparison.plans().get(i);
      lanes.add(new Lane(key(i), plan.name(), marks(comparison, plan)));
    }
    return lanes.build();
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
