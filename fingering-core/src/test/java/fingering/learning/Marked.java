package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.music.Marks;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.plan.Planner;
import fingering.scoring.Scoring;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Music with the marks of a plan printed in it. */
final class Marked {
  private Marked() {}

  /** A random line for the violin; the same seed gives the same line. */
  static Passage violin(int seed, int notes) {
    RandomMusic random = new RandomMusic(seed);
    return Music.violin().tempo(random.tempo()).notes(random.line(notes, 55, 83)); // G3 to B5
  }

  /** The passage with the free plan of a scoring printed at every note. */
  static TrainingExample by(Scoring scoring, String name, Passage passage) {
    Plan plan = Planner.of(passage, scoring).plan(Brief.free("free"));
    Map<Note, Note> printed = new HashMap<>();
    for (PlannedNote planned : plan.notes()) {
      printed.put(planned.note(), printed(planned));
    }
    return new TrainingExample(
        name,
        new Passage(
            passage.title(),
            passage.partId(),
            passage.partName(),
            passage.instrument(),
            passage.tempo(),
            passage.measures(),
            passage.moments().stream()
                .map(moment -> printed(moment, printed))
                .collect(ImmutableList.toImmutableList()),
            passage.remarks()));
  }

  private static Note printed(PlannedNote planned) {
    Note note = planned.note();
    Marks marks = note.marks();
    return new Note(
        note.address(),
        note.place(),
        note.written(),
        note.sounding(),
        note.start(),
        note.length(),
        new Marks(
            marks.trill(),
            marks.accent(),
            marks.harmonic(),
            marks.leftPlucked(),
            Optional.of(planned.finger()),
            OptionalInt.of(planned.placement().string())));
  }

  private static Moment printed(Moment moment, Map<Note, Note> printed) {
    return new Moment(
        moment.starting().stream().map(printed::get).collect(ImmutableList.toImmutableList()),
        moment.held().stream().map(printed::get).collect(ImmutableList.toImmutableList()),
        moment.startMicros(),
        moment.soundMicros(),
        moment.restMicros(),
        moment.slurred(),
        moment.grace(),
        moment.pizzicato(),
        moment.style(),
        moment.surroundings());
  }
}
