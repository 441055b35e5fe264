package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.plan.Planners;
import java.util.Optional;

/** Takes out what cannot be played at all, and plans the rest. */
final class Lines {
  private final Passage passage;
  private final Planners planners;
  private final EasyWays easy;

  Lines(Passage passage, Planners planners, EasyWays easy) {
    this.passage = passage;
    this.planners = planners;
    this.easy = easy;
  }

  /** A moment without its notes out of range; empty where no note is left. */
  Optional<Moment> playable(Moment moment) {
    if (!planners.grips(passage.instrument(), moment).isEmpty()) {
      return Optional.of(moment);
    }
    ImmutableList<Note> left =
        moment.struck().stream()
            .filter(note -> !planners.grips(passage.instrument(), alone(moment, note)).isEmpty())
            .collect(ImmutableList.toImmutableList());
    return left.isEmpty() ? Optional.empty() : Optional.of(with(moment, left, ImmutableList.of()));
  }

  private static Moment alone(Moment moment, Note note) {
    return with(moment, ImmutableList.of(note), ImmutableList.of());
  }

  static Moment with(Moment moment, ImmutableList<Note> struck, ImmutableList<Note> held) {
    return new Moment(
        struck,
        held,
        moment.startMicros(),
        moment.soundMicros(),
        moment.restMicros(),
        moment.slurred(),
        moment.grace(),
        moment.pizzicato(),
        moment.paceMicros());
  }

  ImmutableList<Grip> ways(Moment moment) {
    return planners.grips(passage.instrument(), moment);
  }

  /** A line of these moments, at least one. */
  Line line(ImmutableList<Moment> moments, ImmutableList<ImmutableList<Grip>> ways) {
    Passage music =
        new Passage(
            passage.title(),
            passage.partId(),
            passage.partName(),
            passage.instrument(),
            passage.tempi(),
            passage.measures(),
            moments,
            passage.remarks(),
            passage.oneString());
    ImmutableList<ImmutableList<Grip>> worth =
        passage.oneString().isEmpty() ? easy.of(passage.instrument(), moments, ways) : ways;
    return new Line(ways, planners.of(music, worth).plan(Brief.free("check")));
  }
}
