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

/** Puts a plan together from the path that the search found. */
final class PlanAssembly {
  private PlanAssembly() {}

  static Plan plan(Brief brief, Passage passage, Scoring scoring, Path path) {
    return new Plan(
        brief,
        passage,
        path.grips(),
        notes(brief, passage, path),
        Explanation.of(scoring, passage.moments(), path.grips(), path.cost()),
        path.cost());
  }

  private static ImmutableList<PlannedNote> notes(Brief brief, Passage passage, Path path) {
    ImmutableList.Builder<PlannedNote> notes = ImmutableList.builder();
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
      ImmutableList<Note> held = grip.notes(moment);
      for (int i = 0; i < held.size(); i++) {
        if (moment.starting().contains(held.get(i))) {
          Placement placement = grip.placements().get(i);
          boolean outside = !placement.open() && !brief.prefers(placement.frame().position());
          notes.add(new PlannedNote(m, held.get(i), placement, shift, crossing, outside));
          shift = false; // a chord shifts and crosses once
          crossing = 0;
        }
      }
    }
    return notes.build();
  }

  /** The notes that begin at a moment, as that grip takes them, and no more. */
  static ImmutableList<PlannedNote> starting(int m, Moment moment, Grip grip) {
    ImmutableList.Builder<PlannedNote> notes = ImmutableList.builder();
    ImmutableList<Note> held = grip.notes(moment);
    for (int i = 0; i < held.size(); i++) {
      if (moment.starting().contains(held.get(i))) {
        notes.add(new PlannedNote(m, held.get(i), grip.placements().get(i), false, 0, false));
      }
    }
    return notes.build();
  }
}
