package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.RingingStrings;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.page.music.PrintedSigns;
import fingering.page.music.ShiftDirection;
import fingering.page.view.PlaceLink;
import fingering.page.view.ShiftTable;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.OpenString;
import fingering.tables.RomanNumeral;
import java.util.List;
import java.util.Optional;

/** Advice to write in the part for one plan: the shifts, when to move, and what to tune to. */
final class StudentMarks {
  private static final double MICROS = 1_000_000;

  private final Plan plan;
  private final Passage passage;

  StudentMarks(Plan plan) {
    this.plan = plan;
    passage = plan.passage();
  }

  /**
   * A table with a row for each shift.
   *
   * @param name the name of the plan; empty if it is the only one
   */
  ShiftTable shifts(String name) {
    ImmutableList.Builder<ShiftTable.Row> rows = ImmutableList.builder();
    int moment = -1;
    for (int i = 0; i < plan.notes().size(); i++) {
      PlannedNote note = plan.notes().get(i);
      if (!note.shift() || note.moment() == 0 || note.moment() == moment) {
        continue;
      }
      moment = note.moment();
      rows.add(
          new ShiftTable.Row(
              PlaceLink.beat(note.note().place(), true),
              note.note().written().display(),
              write(note),
              move(note),
              tune(i)));
    }
    return new ShiftTable(name, rows.build());
  }

  private String write(PlannedNote note) {
    Frame before = plan.grips().get(note.moment() - 1).frame();
    Frame to = note.placement().frame();
    String finger =
        note.open()
            ? text("shift.open")
            : text("shift.finger", PrintedSigns.finger(note.placement()));
    String string = RomanNumeral.of(note.placement().string());
    return PrintedSigns.shift(plan, note).equals(Optional.of(ShiftDirection.UP))
        ? text("shift.up", before.display(), to.display(), finger, string)
        : text("shift.down", before.display(), to.display(), finger, string);
  }

  private String move(PlannedNote note) {
    Moment here = passage.moments().get(note.moment());
    if (here.restMicros() > 0) {
      return text("shift.rest", here.restMicros() / MICROS);
    }
    if (plan.grips().get(note.moment() - 1).open()) {
      return text("shift.during-open");
    }
    return here.slurred() ? text("shift.slur") : text("shift.bows");
  }

  /** The first note from the shift to the next one that rings with an open string. */
  private String tune(int arrival) {
    PlannedNote first = plan.notes().get(arrival);
    for (int i = arrival; i < plan.notes().size(); i++) {
      PlannedNote note = plan.notes().get(i);
      if (note.shift() && note.moment() != first.moment()) {
        break;
      }
      Optional<OpenString> rings = rings(note);
      if (rings.isPresent()) {
        String with = rings.get().letterName();
        return i == arrival
            ? text("shift.rings", with)
            : text(
                "shift.rings-later",
                note.note().written().display(),
                note.note().place().measure(),
                note.note().place().beatText(),
                with);
      }
    }
    return text("shift.sing");
  }

  private Optional<OpenString> rings(PlannedNote note) {
    if (!note.placement().stopped()) {
      return Optional.empty();
    }
    List<OpenString> with =
        RingingStrings.with(passage.instrument(), note.placement().string(), note.note().midi());
    return with.stream().findFirst();
  }
}
