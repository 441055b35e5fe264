package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.scoring.HandMovement;
import fingering.scoring.Scoring;
import fingering.scoring.Transition;
import fingering.search.Path;

/** Builds a plan from the path that the search found. */
final class PlanAssembly {
  private PlanAssembly() {}

  static Plan plan(
      Brief brief,
      Passage passage,
      ImmutableList<ImmutableList<Grip>> grips,
      Scoring scoring,
      Path path) {
    return new Plan(
        brief,
        passage,
        path.grips(),
        notes(brief, passage, path),
        Explanation.of(scoring, passage.moments(), grips, path.grips(), path.cost()),
        path.cost());
  }

  private static ImmutableList<PlannedNote> notes(Brief brief, Passage passage, Path path) {
    ImmutableList.Builder<PlannedNote> planned = ImmutableList.builder();
    for (int m = 0; m < path.grips().size(); m++) {
      Moment moment = passage.moments().get(m);
      Grip grip = path.grips().get(m);
      boolean shift = false;
      int crossing = 0;
      if (m > 0) {
        Transition transition = Transition.between(passage.moments().get(m - 1), moment);
        Grip before = path.grips().get(m - 1);
        shift = HandMovement.shifts(transition, before, grip);
        crossing = HandMovement.stringsCrossed(transition, before, grip);
      }
      ImmutableList<Note> notes = grip.notes(moment);
      for (int i = 0; i < notes.size(); i++) {
        if (moment.starting().contains(notes.get(i))) {
          Placement placement = grip.placements().get(i);
          boolean outside = !placement.open() && !brief.prefers(placement.frame().position());
          planned.add(new PlannedNote(m, notes.get(i), placement, shift, crossing, outside));
          shift = false; // a chord has one shift and one crossing
          crossing = 0;
        }
      }
    }
    return planned.build();
  }

  /**
   * The notes that begin at a moment, as a grip plays them. Shifts, crossings and preferred
   * positions are not filled in.
   */
  static ImmutableList<PlannedNote> starting(int m, Moment moment, Grip grip) {
    ImmutableList.Builder<PlannedNote> planned = ImmutableList.builder();
    ImmutableList<Note> notes = grip.notes(moment);
    for (int i = 0; i < notes.size(); i++) {
      if (moment.starting().contains(notes.get(i))) {
        planned.add(new PlannedNote(m, notes.get(i), grip.placements().get(i), false, 0, false));
      }
    }
    return planned.build();
  }
}
