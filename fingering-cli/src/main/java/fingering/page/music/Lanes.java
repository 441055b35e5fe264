package fingering.page.music;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.engraving.drawing.Lane;
import fingering.engraving.drawing.Lane.Mark;
import fingering.music.NoteAddress;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.practice.SpotExercise;
import fingering.tables.Position;
import fingering.tables.RomanNumeral;
import java.util.Map;
import java.util.Optional;

/**
 * The fingers of plans at the notes.
 *
 * @param above the plan above the staff; empty for music without fingers
 * @param below the plan that it is weighed against, only where it differs
 */
public record Lanes(ImmutableList<Lane> above, ImmutableList<Lane> below) {
  /** Music without fingers. */
  public static final Lanes NONE = new Lanes(ImmutableList.of(), ImmutableList.of());

  private static final String OPEN = "0";

  /** The fingers of one plan. */
  public static Lanes of(Plan plan) {
    return new Lanes(ImmutableList.of(new Lane(plan.name(), marks(plan))), ImmutableList.of());
  }

  /** The fingers of an exercise, and the strings where they change. */
  public static Lanes of(SpotExercise exercise) {
    ImmutableMap.Builder<NoteAddress, Mark> marks = ImmutableMap.builder();
    ImmutableSet<Integer> before = ImmutableSet.of();
    for (int m = 0; m < exercise.measures().size(); m++) {
      int note = 0;
      for (SpotExercise.Event event : exercise.measures().get(m)) {
        ImmutableSet<Integer> now =
            event.notes().stream()
                .map(SpotExercise.Fingered::string)
                .collect(ImmutableSet.toImmutableSet());
        for (SpotExercise.Fingered fingered : event.notes()) {
          boolean changes = !now.equals(before) && !fingered.finger().equals(OPEN);
          marks.put(
              new NoteAddress(0, m, note++),
              new Mark(fingered.finger(), RomanNumeral.of(fingered.string()), changes, "", true));
        }
        note += event.notes().isEmpty() ? 1 : 0;
        before = event.notes().isEmpty() ? before : now;
      }
    }
    return new Lanes(
        ImmutableList.of(new Lane(exercise.title(), marks.buildOrThrow())), ImmutableList.of());
  }

  /**
   * The fingers of a plan, and below the staff those of another one where it differs.
   *
   * @param rival the other plan, of the same music; empty if there is none
   */
  public static Lanes of(Plan main, Optional<Plan> rival) {
    Lanes lanes = of(main);
    ImmutableMap<NoteAddress, Mark> shown = lanes.above.get(0).marks();
    return rival
        .map(plan -> new Lane(plan.name(), marks(plan)))
        .map(lane -> lane.only(note -> differ(lane.marks(), shown, note)))
        .map(lane -> new Lanes(lanes.above, ImmutableList.of(lane)))
        .orElse(lanes);
  }

  /** Whether two plans finger a note differently. */
  private static boolean differ(
      Map<NoteAddress, Mark> one, Map<NoteAddress, Mark> other, NoteAddress note) {
    Mark mark = one.get(note);
    Mark second = other.get(note);
    return mark == null
        || second == null
        || !mark.finger().equals(second.finger())
        || !mark.string().equals(second.string())
        // Where the hand waits over an open string is no other fingering.
        || (!mark.position().equals(second.position()) && !mark.finger().equals(OPEN));
  }

  /** The place and name of each of several plans; empty if there is only one. */
  public ImmutableList<String> key() {
    ImmutableList.Builder<String> key = ImmutableList.builder();
    if (!below.isEmpty()) {
      above.forEach(lane -> key.add(text("key.above", lane.name())));
      below.forEach(lane -> key.add(text("key.below", lane.name())));
    }
    return key.build();
  }

  /** What the signs in the music mean. */
  public String signs() {
    return text("signs.all")
        + (any("!") ? " " + text("signs.outside") : "")
        + (any("°") ? " " + text("signs.natural") : "")
        + (any("◇") ? " " + text("signs.artificial") : "");
  }

  private boolean any(String sign) {
    return ImmutableSet.<Lane>builder().addAll(above).addAll(below).build().stream()
        .flatMap(lane -> lane.marks().values().stream())
        .anyMatch(mark -> mark.finger().contains(sign));
  }

  /**
   * The marks of a plan. A finger in 1st position says which string is meant; in other positions a
   * numeral does, where the string changes.
   */
  private static ImmutableMap<NoteAddress, Mark> marks(Plan plan) {
    ImmutableMap.Builder<NoteAddress, Mark> marks = ImmutableMap.builder();
    ImmutableSet<Integer> before = ImmutableSet.of();
    for (int i = 0; i < plan.notes().size(); ) {
      int end = i;
      ImmutableSet.Builder<Integer> strings = ImmutableSet.builder();
      while (end < plan.notes().size()
          && plan.notes().get(end).moment() == plan.notes().get(i).moment()) {
        strings.add(plan.notes().get(end).placement().string());
        end++;
      }
      ImmutableSet<Integer> now = strings.build();
      for (PlannedNote note : plan.notes().subList(i, end)) {
        Position position = note.placement().frame().position();
        boolean first = position.equals(Position.FIRST);
        marks.put(
            note.note().address(),
            new Mark(
                PrintedSigns.finger(note.placement()) + (note.outside() ? "!" : ""),
                RomanNumeral.of(note.placement().string()),
                !first && !note.open() && !now.equals(before),
                position.display(),
                first));
      }
      before = now;
      i = end;
    }
    return marks.buildKeepingLast();
  }
}
