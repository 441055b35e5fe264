package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.fingerboard.Placement;
import fingering.music.NoteAddress;
import fingering.page.staff.Lane;
import fingering.page.staff.Lane.Mark;
import fingering.page.staff.Lane.Way;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.RomanNumeral;
import java.util.Optional;

/** The marks of plans, for the strip. */
final class Lanes {
  private Lanes() {}

  /** The letter of the plan of that index. */
  static String key(int plan) {
    return String.valueOf((char) ('A' + plan));
  }

  /** The plan of that index by its letter and its name: {@code A (1st position)}. */
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
              finger(note.placement()) + (note.outside() ? "!" : ""),
              RomanNumeral.of(now),
              now != string,
              note.placement().frame().position().display(),
              shift(plan, note),
              comparison.differs(i)));
      string = now;
    }
    return marks.buildKeepingLast();
  }

  /** The finger's sign, with a ring where it only touches, and with the finger that touches. */
  static String finger(Placement placement) {
    String stops = placement.finger().symbol();
    return placement
        .touch()
        .map(
            touch ->
                touch.finger() == placement.finger()
                    ? stops + "°"
                    : stops + "◇" + touch.finger().symbol())
        .orElse(stops);
  }

  /** Which way the hand shifts to a note. */
  static Optional<Way> shift(Plan plan, PlannedNote note) {
    if (!note.shift() || note.moment() == 0) {
      return Optional.empty();
    }
    double before = plan.grips().get(note.moment() - 1).frame().first();
    return Optional.of(note.placement().frame().first() > before ? Way.UP : Way.DOWN);
  }
}
