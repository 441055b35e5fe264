package fingering.page;

import static fingering.page.view.PageText.counted;
import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.demand.FixNote;
import fingering.music.Note;
import fingering.page.live.NoteView.Way;
import fingering.plan.Alternative;
import fingering.plan.MomentExplanation;
import fingering.plan.MomentExplanation.Change;
import fingering.plan.MomentExplanation.Difference;
import fingering.plan.PlanFigure;
import fingering.plan.PlannedNote;
import fingering.tables.Position;
import fingering.tables.RomanNumeral;
import fingering.verdict.PlanFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The ways to play the notes of a moment, in words. */
public final class NoteWays {
  /** The most measures that are named. */
  private static final int NAMED = 3;

  private NoteWays() {}

  /**
   * The ways in words.
   *
   * @param alternatives the ways, best first; that of the plan is among them
   * @param now the way of the plan, with the plan that is shown
   */
  public static ImmutableList<Way> of(ImmutableList<Alternative> alternatives, Alternative now) {
    ImmutableList.Builder<Way> ways = ImmutableList.builder();
    for (Alternative way : alternatives) {
      boolean same = same(way, now);
      MomentExplanation why = new MomentExplanation(now, way);
      long more = why.extraCost();
      ways.add(
          new Way(
              fix(way),
              fingering(way),
              same ? text("way.now") : price(why),
              same ? "" : rest(why),
              same || more == 0 ? "" : (more > 0 ? "+" : "−") + Math.abs(more),
              same));
    }
    return ways.build();
  }

  /** Whether two ways play the notes alike. */
  public static boolean same(Alternative one, Alternative other) {
    List<PlannedNote> some = one.notes();
    List<PlannedNote> others = other.notes();
    for (int i = 0; i < some.size(); i++) {
      if (!some.get(i).sameFingering(others.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** The fingering of each note as a lesson writes it. */
  private static String fix(Alternative way) {
    return way.notes().stream().map(NoteWays::fix).collect(Collectors.joining(";"));
  }

  private static String fix(PlannedNote note) {
    String place = string(note) + "/" + note.finger();
    return note.open() ? place : place + "@" + note.position();
  }

  /** The notes of a moment by name. */
  public static String names(List<Note> notes) {
    return notes.stream().map(note -> note.written().display()).collect(Collectors.joining("+"));
  }

  private static String fingering(Alternative way) {
    List<PlannedNote> notes = way.notes();
    List<Position> positions =
        notes.stream().filter(note -> !note.open()).map(PlannedNote::position).distinct().toList();
    if (notes.size() == 1 || positions.size() != 1) {
      return notes.stream().map(NoteWays::place).collect(Collectors.joining(" + "));
    }
    // The position of a chord is named once.
    return notes.stream()
            .map(note -> note.open() ? place(note) : text("way.on", note.finger(), string(note)))
            .collect(Collectors.joining(" + "))
        + ", "
        + text("way.position", positions.get(0).display());
  }

  private static String string(PlannedNote note) {
    return RomanNumeral.of(note.string());
  }

  private static String place(PlannedNote note) {
    return note.open()
        ? text("way.open", string(note))
        : text("way.stopped", note.finger(), string(note), note.position().display());
  }

  /** A fingering that is fixed, in words. */
  public static String fixed(FixNote fix) {
    List<String> parts = new ArrayList<>();
    fix.finger().ifPresent(finger -> parts.add(text("way.finger", finger.symbol())));
    fix.string().ifPresent(string -> parts.add(text("way.string", RomanNumeral.of(string))));
    fix.position().ifPresent(position -> parts.add(text("way.position", position.display())));
    return text(
        "way.fixed",
        fix.when().measure(),
        fix.when().beat().toPlainString(),
        String.join(", ", parts));
  }

  /** What a way costs more than that of the plan. */
  private static String price(MomentExplanation why) {
    if (why.extraCost() == 0) {
      return text("way.alike");
    }
    PlanFigures more =
        PlanFigures.of(why.other().plan()).minus(PlanFigures.of(why.chosen().plan()));
    List<String> clauses = figures(more);
    if (clauses.isEmpty()) {
      boolean harder = why.extraCost() > 0;
      rule(why, harder)
          .map(NoteWays::lower)
          .map(rule -> harder ? text("way.harder", rule) : text("way.easier", rule))
          .ifPresent(clauses::add);
    }
    return String.join(", ", clauses);
  }

  /** The rule that makes most of a difference. */
  private static Optional<String> rule(MomentExplanation why, boolean harder) {
    ImmutableList<Difference> rules = why.byRule();
    return rules.isEmpty()
        ? Optional.empty()
        : Optional.of(rules.get(harder ? 0 : rules.size() - 1).name());
  }

  private static String lower(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  /** Differences of figures in words: what is more, then what is less. */
  public static List<String> figures(PlanFigures more) {
    List<String> clauses = new ArrayList<>();
    for (PlanFigure figure : PlanFigure.values()) {
      int number = more.count(figure);
      if (number > 0) {
        clauses.add(text("way.more", number, figure.noun(number)));
      }
    }
    for (PlanFigure figure : PlanFigure.values()) {
      int number = -more.count(figure);
      if (number > 0) {
        clauses.add(text("way.fewer", number, figure.noun(number)));
      }
    }
    return clauses;
  }

  /** What else changes. */
  private static String rest(MomentExplanation why) {
    ImmutableList<Change> changes = why.changesElsewhere();
    if (changes.isEmpty()) {
      return text("way.alone");
    }
    List<String> measures =
        changes.stream().map(change -> change.other().note().place().measure()).distinct().toList();
    return text(
        "way.rest",
        counted("way.notes", changes.size()),
        measures.size() > NAMED
            ? text("way.span", measures.get(0), measures.get(measures.size() - 1))
            : String.join(", ", measures));
  }
}
