package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.BeatUnit;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Tempo;
import fingering.plan.Plan;
import fingering.practice.SpotExercise.Fingered;
import fingering.practice.SpotExercise.Stroke;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes exercises out of a plan's own notes and fingers (common practice, no source). */
final class ExerciseBuilder {
  private static final BeatUnit HALF = new BeatUnit("half", 0);
  private static final BeatUnit QUARTER = BeatUnit.QUARTER;
  private static final BeatUnit EIGHTH = new BeatUnit("eighth", 0);
  private static final BeatUnit DOTTED = new BeatUnit("eighth", 1);
  private static final BeatUnit SHORT = new BeatUnit("16th", 0);
  private static final Tempo SLOW = new Tempo(QUARTER, BigDecimal.valueOf(60));

  /** Eighths, or pairs of dotted and short notes, to a measure. */
  private static final int IN_MEASURE = 8;

  private final Plan plan;
  private final Instrument instrument;

  ExerciseBuilder(Plan plan) {
    this.plan = plan;
    instrument = plan.passage().instrument();
  }

  private SpotExercise exercise(
      String what, int moment, ImmutableList<ImmutableList<Stroke>> measures) {
    Moment at = plan.passage().moments().get(moment);
    int fifths =
        plan.passage().measures().stream()
            .filter(measure -> measure.index() == at.place().measureIndex())
            .map(Measure::fifths)
            .findFirst()
            .orElse(0);
    String title = what + ", measure " + at.place().measure();
    return new SpotExercise(title, instrument, fifths, SLOW, measures);
  }

  private Pitch written(Pitch sounding) {
    return sounding.plusOctaves(-instrument.writtenOctaves());
  }

  private ImmutableList<Fingered> notes(int moment) {
    Grip grip = plan.grips().get(moment);
    List<Note> sounding = grip.notes(plan.passage().moments().get(moment));
    ImmutableList.Builder<Fingered> fingered = ImmutableList.builder();
    for (int i = 0; i < sounding.size(); i++) {
      Placement placement = grip.placements().get(i);
      fingered.add(
          new Fingered(
              written(sounding.get(i).sounding()),
              placement.finger().symbol(),
              placement.string()));
    }
    return fingered.build();
  }

  private static Stroke rest(BeatUnit value) {
    return new Stroke(ImmutableList.of(), value);
  }

  private static ImmutableList<Stroke> measure(Stroke... contexts) {
    return ImmutableList.copyOf(contexts);
  }

  /**
   * The note under the finger that leaves, where the hand has arrived; empty where that finger is
   * no guide, or where the hand moves unheard: in a rest, or while an open string sounds.
   */
  Optional<Fingered> guide(int from, int to) {
    if (to - from > 1 || rest(from, to) > 0) {
      return Optional.empty();
    }
    Placement left = plan.grips().get(from).top();
    Placement reached = plan.grips().get(to).top();
    double way = reached.frame().first() - left.frame().first();
    int semitones = left.semitones() + (int) Math.round(way);
    if (!left.stopped() || semitones <= 0 || left.finger() == reached.finger()) {
      return Optional.empty();
    }
    Pitch sounding = instrument.string(left.string()).above(semitones);
    return Optional.of(new Fingered(written(sounding), left.finger().symbol(), left.string()));
  }

  /** Microseconds of rest on the way from one moment to another, as printed. */
  long rest(int from, int to) {
    return plan.passage().moments().subList(from + 1, to + 1).stream()
        .mapToLong(Moment::restMicros)
        .sum();
  }

  /** The shift alone and slow, with a stop before it, and over the guide note if there is one. */
  SpotExercise shift(int from, int to) {
    ImmutableList<Fingered> left = notes(from);
    ImmutableList<Fingered> reached = notes(to);
    ImmutableList.Builder<ImmutableList<Stroke>> measures = ImmutableList.builder();
    measures.add(measure(new Stroke(left, HALF), new Stroke(reached, HALF)));
    measures.add(measure(new Stroke(left, QUARTER), rest(QUARTER), new Stroke(reached, HALF)));
    guide(from, to)
        .ifPresent(
            guide ->
                measures.add(
                    measure(
                        new Stroke(left, QUARTER),
                        new Stroke(ImmutableList.of(guide), QUARTER),
                        new Stroke(reached, HALF))));
    measures.add(measure(new Stroke(reached, HALF), new Stroke(left, HALF)));
    return exercise("Shift", to, measures.build());
  }

  /** Two grips one after the other, held long. */
  SpotExercise held(String what, int from, int to) {
    return exercise(
        what,
        to,
        ImmutableList.of(
            measure(new Stroke(notes(from), HALF), new Stroke(notes(to), HALF)),
            measure(new Stroke(notes(to), HALF), new Stroke(notes(from), HALF))));
  }

  /** A run in dotted rhythms, both ways round. */
  SpotExercise dotted(int from, int to) {
    List<Stroke> contexts = new ArrayList<>();
    for (boolean longFirst : List.of(true, false)) {
      for (int m = from, i = 0; m <= to; m++, i++) {
        boolean dot = (i % 2 == 0) == longFirst;
        contexts.add(new Stroke(notes(m), dot ? DOTTED : SHORT));
      }
      pad(contexts, longFirst ? ImmutableList.of(DOTTED, SHORT) : ImmutableList.of(SHORT, DOTTED));
    }
    return exercise("Dotted rhythms", from, measures(contexts));
  }

  /** The bow alone on the open strings of a run, and then with the fingers. */
  SpotExercise crossing(int from, int to) {
    List<Stroke> contexts = new ArrayList<>();
    for (int m = from; m <= to; m++) {
      ImmutableList<Fingered> open =
          notes(m).stream()
              .map(note -> open(note.string()))
              .collect(ImmutableList.toImmutableList());
      contexts.add(new Stroke(open, EIGHTH));
    }
    pad(contexts, ImmutableList.of(EIGHTH));
    for (int m = from; m <= to; m++) {
      contexts.add(new Stroke(notes(m), EIGHTH));
    }
    pad(contexts, ImmutableList.of(EIGHTH));
    return exercise("String crossings", from, measures(contexts));
  }

  /** A figure twice, with a stop after each time. */
  SpotExercise figure(int from, int to) {
    List<Stroke> contexts = new ArrayList<>();
    for (int time = 0; time < 2; time++) {
      for (int m = from; m <= to; m++) {
        contexts.add(new Stroke(notes(m), EIGHTH));
      }
      contexts.add(rest(EIGHTH));
      pad(contexts, ImmutableList.of(EIGHTH));
    }
    return exercise("Figure", from, measures(contexts));
  }

  private Fingered open(int string) {
    return new Fingered(written(instrument.string(string).pitch()), "0", string);
  }

  private static void pad(List<Stroke> contexts, ImmutableList<BeatUnit> values) {
    while (contexts.size() % IN_MEASURE != 0) {
      contexts.add(rest(values.get(contexts.size() % values.size())));
    }
  }

  private static ImmutableList<ImmutableList<Stroke>> measures(List<Stroke> contexts) {
    return Lists.partition(contexts, IN_MEASURE).stream()
        .map(ImmutableList::copyOf)
        .collect(ImmutableList.toImmutableList());
  }
}
