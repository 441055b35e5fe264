package fingering.page;

import fingering.fingerboard.Frame;
import fingering.fingerboard.RingingStrings;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.page.staff.Lane.Way;
import fingering.page.svg.Svg;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.OpenString;
import fingering.tables.RomanNumeral;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a student writes into the part for one plan: shifts, where to move, what to tune to. */
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
   * @param index the plan's index among those of the page
   */
  String shifts(int index) {
    String name = Svg.escaped(Lanes.name(index, plan.name()));
    StringBuilder table =
        new StringBuilder("<table class=\"advice\"><caption>")
            .append(name)
            .append(": shifts")
            .append("</caption><thead><tr><th scope=\"col\">Where</th><th scope=\"col\">Write")
            .append("</th><th scope=\"col\">Move</th><th scope=\"col\">Tune the arrival</th></tr>")
            .append("</thead><tbody>\n");
    int told = 0;
    int moment = -1;
    for (int i = 0; i < plan.notes().size(); i++) {
      PlannedNote note = plan.notes().get(i);
      if (!note.shift() || note.moment() == 0 || note.moment() == moment) {
        continue;
      }
      moment = note.moment();
      told++;
      table.append("<tr><th scope=\"row\">").append(MeasureLinks.beat(note.note().place(), true));
      table.append(", ").append(Svg.escaped(note.note().written().display())).append("</th>");
      table.append(cell(write(note)));
      table.append(cell(move(note)));
      table.append(cell(tune(i))).append("</tr>\n");
    }
    return told == 0
        ? "<p>%s: no shift.</p>\n".formatted(name)
        : table.append("</tbody></table>\n").toString();
  }

  private static String cell(String words) {
    return "<td>" + Svg.escaped(words) + "</td>";
  }

  private String write(PlannedNote note) {
    Frame before = plan.grips().get(note.moment() - 1).frame();
    String way = Lanes.shift(plan, note).map(w -> w == Way.UP ? "up" : "down").orElse("");
    String to = note.placement().frame().display();
    String open =
        note.open() ? "under the open string" : "finger\u00a0" + Lanes.finger(note.placement());
    return "%s from %s to %s, %s, %s"
        .formatted(
            way,
            before.display(),
            to,
            open,
            "string\u00a0" + RomanNumeral.of(note.placement().string()));
  }

  private String move(PlannedNote note) {
    Moment here = passage.moments().get(note.moment());
    if (here.restMicros() > 0) {
      return String.format(
          Locale.ROOT, "in the rest before it, %.1f s: breathe", here.restMicros() / MICROS);
    }
    if (plan.grips().get(note.moment() - 1).open()) {
      return "under the open string before it";
    }
    return here.slurred() ? "under the slur: lighten the finger" : "between the bows";
  }

  /** The note itself where it rings with an open string, else the next of the stay that does. */
  private String tune(int arrival) {
    PlannedNote first = plan.notes().get(arrival);
    for (int i = arrival; i < plan.notes().size(); i++) {
      PlannedNote note = plan.notes().get(i);
      if (note.shift() && note.moment() != first.moment()) {
        break;
      }
      Optional<OpenString> rings = rings(note);
      if (rings.isPresent()) {
        String with = "open " + rings.get().letterName();
        return i == arrival
            ? "rings with " + with
            : "%s at m. %s beat %s rings with %s"
                .formatted(
                    note.note().written().display(),
                    note.note().place().measure(),
                    note.note().place().beatText(),
                    with);
      }
    }
    return "none rings here: sing it first";
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
