package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.BeatUnit;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Tempo;
import fingering.plan.Plan;
import fingering.practice.SpotExercise.Event;
import fingering.practice.SpotExercise.Fingered;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Builds exercises from the notes and fingers of a plan (common practice, no source). */
final class ExerciseBuilder {
  private static final BeatUnit WHOLE = new BeatUnit("whole", 0);
  private static final BeatUnit HALF = new BeatUnit("half", 0);
  private static final BeatUnit QUARTER = BeatUnit.QUARTER;
  private static final BeatUnit EIGHTH = new BeatUnit("eighth", 0);
  private static final BeatUnit DOTTED = new BeatUnit("eighth", 1);
  private static final BeatUnit SHORT = new BeatUnit("16th", 0);
  private static final Tempo SLOW = new Tempo(QUARTER, BigDecimal.valueOf(60));

  /** The sixteenths of a measure, of a half note, and of a beat. */
  private static final int MEASURE = 16;

  private static final int HALF_MEASURE = 8;
  private static final int BEAT = 4;

  private final Plan plan;
  private final Instrument instrument;

  ExerciseBuilder(Plan plan) {
    this.plan = plan;
    instrument = plan.passage().instrument();
  }

  private SpotExercise exercise(
      String name, int moment, ImmutableList<ImmutableList<Event>> measures) {
    Moment at = plan.passage().moments().get(moment);
    String title = name + ", measure " + at.place().measure();
    return new SpotExercise(title, instrument, fifths(moment), SLOW, measures);
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

  private static Event rest(BeatUnit value) {
    return new Event(ImmutableList.of(), value);
  }

  private static ImmutableList<Event> measure(Event... events) {
    return ImmutableList.copyOf(events);
  }

  /**
   * Returns the guide note of a shift: the note under the old finger once the hand has arrived.
   * Empty if the finger stays the same or an open string was played, and if the hand moves
   * silently, in a rest or while an open string sounds.
   */
  Optional<Fingered> guide(int from, int to) {
    if (to - from > 1 || rest(from, to) > 0) {
      return Optional.empty();
    }
    Placement left = plan.grips().get(from).top();
    Placement reached = plan.grips().get(to).top();
    if (!left.stopped() || left.finger() == reached.finger()) {
      return Optional.empty();
    }
    OpenString string = instrument.string(left.string());
    Pitch sounding = new GuideNote(left, reached, string, fifths(to)).pitch();
    return sounding.midi() <= string.pitch().midi()
        ? Optional.empty()
        : Optional.of(new Fingered(written(sounding), left.finger().symbol(), left.string()));
  }

  private int fifths(int moment) {
    int measure = plan.passage().moments().get(moment).place().measureIndex();
    return plan.passage().measure(measure).map(Measure::fifths).orElse(0);
  }

  /** Returns the microseconds of printed rest between two moments. */
  long rest(int from, int to) {
    return plan.passage().moments().subList(from + 1, to + 1).stream()
        .mapToLong(Moment::restMicros)
        .sum();
  }

  /** Writes a shift: slowly, with a stop before it, and over the guide note if there is one. */
  SpotExercise shift(int from, int to) {
    ImmutableList<Fingered> left = notes(from);
    ImmutableList<Fingered> reached = notes(to);
    ImmutableList.Builder<ImmutableList<Event>> measures = ImmutableList.builder();
    measures.add(measure(new Event(left, HALF), new Event(reached, HALF)));
    measures.add(measure(new Event(left, QUARTER), rest(QUARTER), new Event(reached, HALF)));
    guide(from, to)
        .ifPresent(
            guide ->
                measures.add(
                    measure(
                        new Event(left, QUARTER),
                        new Event(ImmutableList.of(guide), QUARTER),
                        new Event(reached, HALF))));
    measures.add(measure(new Event(reached, HALF), new Event(left, HALF)));
    return exercise("Shift", to, measures.build());
  }

  /** Writes two grips one after the other, in half notes. */
  SpotExercise held(String name, int from, int to) {
    return exercise(
        name,
        to,
        ImmutableList.of(
            measure(new Event(notes(from), HALF), new Event(notes(to), HALF)),
            measure(new Event(notes(to), HALF), new Event(notes(from), HALF))));
  }

  /** Writes a run in dotted rhythms: long-short, then short-long. */
  SpotExercise dotted(int from, int to) {
    List<Event> events = new ArrayList<>();
    for (boolean longFirst : List.of(true, false)) {
      for (int m = from, i = 0; m <= to; m++, i++) {
        boolean dot = (i % 2 == 0) == longFirst;
        events.add(new Event(notes(m), dot ? DOTTED : SHORT));
      }
      fill(events);
    }
    return exercise("Dotted rhythms", from, measures(events));
  }

  /** Writes the open strings of a run, then the run itself. */
  SpotExercise crossing(int from, int to) {
    List<Event> events = new ArrayList<>();
    for (int m = from; m <= to; m++) {
      ImmutableList<Fingered> open =
          notes(m).stream()
              .map(note -> open(note.string()))
              .collect(ImmutableList.toImmutableList());
      events.add(new Event(open, EIGHTH));
    }
    fill(events);
    for (int m = from; m <= to; m++) {
      events.add(new Event(notes(m), EIGHTH));
    }
    fill(events);
    return exercise("String crossings", from, measures(events));
  }

  /** Writes a figure twice, with a stop after each time. */
  SpotExercise figure(int from, int to) {
    List<Event> events = new ArrayList<>();
    for (int time = 0; time < 2; time++) {
      for (int m = from; m <= to; m++) {
        events.add(new Event(notes(m), EIGHTH));
      }
      if (position(events) == 0) {
        events.add(rest(WHOLE));
      }
      fill(events);
    }
    return exercise("Repeated figure", from, measures(events));
  }

  private Fingered open(int string) {
    return new Fingered(written(instrument.string(string).pitch()), "0", string);
  }

  /** Fills the last measure with rests, none across a beat or the middle of the measure. */
  private static void fill(List<Event> events) {
    for (int at = position(events); at != 0; at = position(events)) {
      events.add(
          rest(
              switch (at % BEAT) {
                case 1 -> DOTTED;
                case 2 -> EIGHTH;
                case 3 -> SHORT;
                default -> at == HALF_MEASURE ? HALF : QUARTER;
              }));
    }
  }

  /** Returns the position after the last event: sixteenths from the start of its measure. */
  private static int position(List<Event> events) {
    return events.stream().mapToInt(ExerciseBuilder::sixteenths).sum() % MEASURE;
  }

  private static int sixteenths(Event event) {
    return event.value().quarters().multiply(BEAT).intValue();
  }

  private static ImmutableList<ImmutableList<Event>> measures(List<Event> events) {
    ImmutableList.Builder<ImmutableList<Event>> measures = ImmutableList.builder();
    List<Event> measure = new ArrayList<>();
    for (Event event : events) {
      measure.add(event);
      if (position(measure) == 0) {
        measures.add(ImmutableList.copyOf(measure));
        measure.clear();
      }
    }
    return measures.build();
  }
}
