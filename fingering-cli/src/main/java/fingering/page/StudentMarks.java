package fingering.page;

import fingering.fingerboard.Frame;
import fingering.fingerboard.RingingStrings;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.page.staff.Lane.Direction;
import fingering.svg.Svg;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.OpenString;
import fingering.tables.RomanNumeral;
import java.util.List;
import java.util.Locale;
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
   * @param index the index of the plan on the page
   */
  String shifts(int index) {
    String name = Svg.escaped(Lanes.name(index, plan.name()));
    StringBuilder table =
        new StringBuilder("<table class=\"advice\"><caption>")
            .append(name)
            .append(": shifts")
            .append("</caption><thead><tr><th scope=\"col\">Where</th><th scope=\"col\">Write")
            .append(
                "</th><th scope=\"col\">Move</th><th scope=\"col\">Tune the arrival note</th></tr>")
            .append("</thead><tbody>\n");
    boolean any = false;
    int moment = -1;
    for (int i = 0; i < plan.notes().size(); i++) {
      PlannedNote note = plan.notes().get(i);
      if (!note.shift() || note.moment() == 0 || note.moment() == moment) {
        continue;
      }
      moment = note.moment();
      any = true;
      table.append("<tr><th scope=\"row\">").append(MeasureLinks.beat(note.note().place(), true));
      table.append(", ").append(Svg.escaped(note.note().written().display())).append("</th>");
      table.append(cell(write(note)));
      table.append(cell(move(note)));
      table.append(cell(tune(i))).append("</tr>\n");
    }
    return !any
        ? "<p>%s: no shifts.</p>\n".formatted(name)
        : table.append("</tbody></table>\n").toString();
  }

  private static String cell(String words) {
    return "<td>" + Svg.escaped(words) + "</td>";
  }

  private String write(PlannedNote note) {
    Frame before = plan.grips().get(note.moment() - 1).frame();
    String direction =
        PrintedSigns.shift(plan, note).map(d -> d == Direction.UP ? "up" : "down").orElse("");
    String to = note.placement().frame().display();
    String open =
        note.open()
            ? "during the open string"
            : "finger\u00a0" + PrintedSigns.finger(note.placement());
    return "%s from %s to %s, %s, %s"
        .formatted(
            direction,
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
      return "during the open string before it";
    }
    return here.slurred() ? "within the slur: lighten the finger" : "between bow strokes";
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
    return "no note rings here: sing it first";
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
