package fingering.tempo;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.PitchRequest;
import fingering.fingerboard.Placement;
import fingering.fingerboard.Taken;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.plan.Explanation;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import java.util.List;

/** Plans with given fingerings. */
final class Studies {
  private static final Splitter BLANKS = Splitter.on(' ').omitEmptyStrings();

  private Studies() {}

  /**
   * A plan with a given fingering of each note.
   *
   * @param music an instrument and a tempo
   * @param events as {@link Music} reads them
   * @param fingering for each note string, finger and position: {@code 2:1:3}, or {@code 2:0:3} for
   *     an open string with the hand in 3rd
   */
  static Plan plan(String instrument, Music music, String events, String fingering) {
    Passage passage = music.notes(events);
    Taken hand = Taken.on(instrument);
    List<String> stops = BLANKS.splitToList(fingering);
    ImmutableList.Builder<Grip> grips = ImmutableList.builder();
    for (int m = 0; m < passage.moments().size(); m++) {
      List<String> stop = Splitter.on(':').splitToList(stops.get(m));
      PitchRequest note = PitchRequest.of(passage.moments().get(m).starting().get(0));
      grips.add(hand.by(note, Integer.parseInt(stop.get(0)), stop.get(1), stop.get(2)));
    }
    return of(passage, grips.build());
  }

  /** A plan for a violin part. */
  static Plan violin(String tempo, String events, String fingering) {
    return plan("violin", Music.violin().tempo(tempo), events, fingering);
  }

  /** A plan of some grips, regardless of cost. */
  static Plan of(Passage passage, List<Grip> grips) {
    ImmutableList<Grip> path = ImmutableList.copyOf(grips);
    Scoring nothing = Scoring.of(ImmutableList.of(), Weights.commonPractice());
    return new Plan(
        Brief.free("given"),
        passage,
        path,
        notes(passage, path),
        Explanation.of(
            nothing,
            passage.moments(),
            path.stream().map(ImmutableList::of).collect(ImmutableList.toImmutableList()),
            path,
            0),
        0);
  }

  private static ImmutableList<PlannedNote> notes(Passage passage, List<Grip> path) {
    ImmutableList.Builder<PlannedNote> planned = ImmutableList.builder();
    for (int m = 0; m < path.size(); m++) {
      Moment moment = passage.moments().get(m);
      List<Note> notes = path.get(m).notes(moment);
      for (int i = 0; i < notes.size(); i++) {
        if (moment.starting().contains(notes.get(i))) {
          Placement placement = path.get(m).placements().get(i);
          planned.add(new PlannedNote(m, notes.get(i), placement, false, 0, false));
        }
      }
    }
    return planned.build();
  }
}
