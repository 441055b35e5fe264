package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.music.TempoChange;
import fingering.music.print.PrintedPart;
import fingering.practice.PlayingOrder.Span;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * When each note of a passage sounds at a tempo, and when the metronome clicks, with one measure to
 * count in: one table for everything that plays a passage. A pickup is counted in with its whole
 * measure as well. Repeats, da capo and dal segno are played, so a note may sound several times.
 * Times are in microseconds from the first click.
 *
 * @param sounds the notes, in order of time
 * @param clicks the clicks, in order of time
 * @param measures the measures as they are played, in order of time
 * @param tempi the tempi, in order of time; the first begins at 0
 * @param countIn the length of the count-in
 * @param length the time at which the last measure ends
 */
public record NoteTimes(
    ImmutableList<Sound> sounds,
    ImmutableList<Click> clicks,
    ImmutableList<Bar> measures,
    ImmutableList<Change> tempi,
    long countIn,
    long length) {
  private static final double MINUTE = 60e6;

  /** Clicks slower than this, a minute, are subdivided (common practice, no source). */
  private static final double SLOW = 60;

  /**
   * A note that sounds.
   *
   * @param moment the index of its moment in the passage
   * @param note the note
   * @param pizzicato whether it is plucked
   * @param start its start
   * @param length its length, above 0
   */
  public record Sound(int moment, Note note, boolean pizzicato, long start, long length) {}

  /**
   * A click of the metronome.
   *
   * @param start its time
   * @param kind what it marks
   */
  public record Click(long start, Kind kind) {

    /** What a click marks. */
    public enum Kind {
      /** The beginning of a measure. */
      FIRST,
      BEAT,
      /** A half of a beat, or a third of a dotted one. */
      SUBDIVISION
    }
  }

  /**
   * A measure that is played, or the part of one after a repeat sign in it, or before one.
   *
   * @param index index of the measure in the part
   * @param start its start
   * @param length its length
   * @param full the length of a whole measure in its meter, for a count-in
   * @param beat the time between two clicks that are no subdivisions
   */
  public record Bar(int index, long start, long length, long full, long beat) {}

  /**
   * A tempo.
   *
   * @param start the time from which it applies
   * @param tempo the tempo
   */
  public record Change(long start, Tempo tempo) {}

  /**
   * Returns the times of a passage.
   *
   * @param printed what is printed in it: the signs of repeats
   * @param opening the tempo at the beginning; later tempi change in proportion
   */
  public static NoteTimes of(Passage passage, PrintedPart printed, Tempo opening) {
    return new Builder(passage, opening).build(PlayingOrder.of(passage, printed));
  }

  private static final class Builder {
    private final Passage passage;
    private final double slower;
    private final ImmutableList<TempoChange> tempi;

    /** The times of the tempi, in quarter notes and in microseconds from the start. */
    private final double[] changeAt;

    private final double[] changeMicros;
    private final BigFraction click;
    private final Measure first;

    /** The beats that a pickup lacks, in quarter notes. */
    private final BigFraction missing;

    private final double countIn;
    private final ImmutableList.Builder<Sound> sounds = ImmutableList.builder();
    private final ImmutableList.Builder<Click> clicks = ImmutableList.builder();
    private final ImmutableList.Builder<Bar> bars = ImmutableList.builder();
    private final List<Change> changes = new ArrayList<>();

    Builder(Passage passage, Tempo opening) {
      this.passage = passage;
      slower = quarters(passage.tempo()) / quarters(opening);
      first = passage.measures().get(0);
      ImmutableList.Builder<TempoChange> scaled = ImmutableList.builder();
      scaled.add(new TempoChange(first.start(), opening));
      passage.tempi().stream()
          .skip(1)
          .map(change -> new TempoChange(change.start(), scaled(change.tempo())))
          .forEach(scaled::add);
      tempi = scaled.build();
      changeAt = tempi.stream().mapToDouble(change -> change.start().doubleValue()).toArray();
      changeMicros = new double[changeAt.length];
      for (int i = 1; i < changeAt.length; i++) {
        changeMicros[i] =
            changeMicros[i - 1]
                + (changeAt[i] - changeAt[i - 1]) * MINUTE / quarters(tempi.get(i - 1).tempo());
      }
      click = BeatConversion.clicks(opening).unit().quarters();
      BigFraction lacking = full(first).subtract(first.length());
      missing = lacking.signum() > 0 ? lacking : BigFraction.ZERO;
      countIn = full(first).add(missing).doubleValue() * MINUTE / quarters(opening);
    }

    private static double quarters(Tempo tempo) {
      return tempo.quartersPerMinute().doubleValue();
    }

    private Tempo scaled(Tempo tempo) {
      BigDecimal perMinute =
          BigDecimal.valueOf(tempo.perMinute().doubleValue() / slower)
              .round(MathContext.DECIMAL32)
              .min(BigDecimal.valueOf(1000));
      return new Tempo(tempo.unit(), perMinute);
    }

    /** Returns the microseconds from the start of the passage to a time in quarter notes. */
    private double micros(BigFraction at) {
      double quarter = at.doubleValue();
      int found = Arrays.binarySearch(changeAt, quarter);
      int i = Math.max(0, found < 0 ? -found - 2 : found);
      return changeMicros[i] + (quarter - changeAt[i]) * MINUTE / quarters(tempi.get(i).tempo());
    }

    private Tempo tempoAt(BigFraction at) {
      Tempo tempo = tempi.get(0).tempo();
      for (TempoChange change : tempi) {
        if (change.start().compareTo(at) <= 0) {
          tempo = change.tempo();
        }
      }
      return tempo;
    }

    NoteTimes build(PlayingOrder order) {
      changes.add(new Change(0, tempi.get(0).tempo()));
      countIn();
      double time = countIn;
      for (Span span : order.spans()) {
        double begins = micros(span.from());
        addTempi(span, time - begins);
        addClicks(span, time - begins);
        addSounds(span, time - begins);
        time += micros(span.to()) - begins;
      }
      return new NoteTimes(
          sounds.build(),
          clicks.build(),
          bars.build(),
          ImmutableList.copyOf(changes),
          Math.round(countIn),
          Math.round(time));
    }

    private void countIn() {
      BigFraction length = full(first).add(missing);
      BigFraction step = step(first);
      double quarter = MINUTE / quarters(tempi.get(0).tempo());
      for (BigFraction at = BigFraction.ZERO; at.compareTo(length) < 0; at = at.add(step)) {
        boolean beginning = at.signum() == 0 || at.equals(full(first));
        clicks.add(
            new Click(
                Math.round(at.doubleValue() * quarter),
                beginning ? Click.Kind.FIRST : Click.Kind.BEAT));
      }
    }

    /**
     * Adds the tempi of a span.
     *
     * @param later the time of the start of the passage, if the span were played from there
     */
    private void addTempi(Span span, double later) {
      addTempo(span.from(), tempoAt(span.from()), later);
      for (TempoChange change : tempi) {
        if (span.contains(change.start())) {
          addTempo(change.start(), change.tempo(), later);
        }
      }
    }

    private void addTempo(BigFraction at, Tempo tempo, double later) {
      if (!changes.get(changes.size() - 1).tempo().equals(tempo)) {
        changes.add(new Change(Math.round(later + micros(at)), tempo));
      }
    }

    private void addClicks(Span span, double later) {
      for (Measure measure : passage.measures()) {
        BigFraction end = measure.start().add(measure.length());
        BigFraction from = larger(measure.start(), span.from());
        BigFraction to = smaller(end, span.to());
        if (from.compareTo(to) >= 0) {
          continue;
        }
        BigFraction each = step(measure);
        addBar(measure, from, to, each, later);
        BigFraction small = each.divide(each.getNumeratorAsInt() % 3 == 0 ? 3 : 2);
        BigFraction before = measure.equals(first) ? missing : BigFraction.ZERO;
        for (BigFraction at = before;
            at.subtract(before).compareTo(measure.length()) < 0;
            at = at.add(small)) {
          BigFraction written = measure.start().add(at).subtract(before);
          if (span.contains(written)) {
            clicks.add(new Click(Math.round(later + micros(written)), kind(at, before, each)));
          }
        }
      }
    }

    private static Click.Kind kind(BigFraction at, BigFraction before, BigFraction each) {
      if (at.signum() == 0) {
        return Click.Kind.FIRST;
      }
      return whole(at.subtract(before).divide(each)) ? Click.Kind.BEAT : Click.Kind.SUBDIVISION;
    }

    private void addBar(
        Measure measure, BigFraction from, BigFraction to, BigFraction each, double later) {
      double quarter = MINUTE / quarters(tempoAt(from));
      long start = Math.round(later + micros(from));
      bars.add(
          new Bar(
              measure.index(),
              start,
              Math.round(later + micros(to)) - start,
              Math.round(full(measure).doubleValue() * quarter),
              Math.round(each.doubleValue() * quarter)));
    }

    private void addSounds(Span span, double later) {
      double end = later + micros(span.to());
      for (int m = 0; m < passage.moments().size(); m++) {
        Moment moment = passage.moments().get(m);
        if (!span.contains(moment.starting().get(0).start())) {
          continue;
        }
        double start = later + moment.startMicros() * slower;
        for (Note note : moment.starting()) {
          double stop =
              moment.grace() ? start + moment.soundMicros() * slower : later + micros(note.end());
          long from = Math.round(start);
          // A tie over a repeat sign ends there: the note after it is another one.
          long length = Math.round(Math.min(stop, end)) - from;
          sounds.add(new Sound(m, note, moment.pizzicato(), from, Math.max(1, length)));
        }
      }
    }

    private static BigFraction larger(BigFraction one, BigFraction other) {
      return one.compareTo(other) > 0 ? one : other;
    }

    private static BigFraction smaller(BigFraction one, BigFraction other) {
      return one.compareTo(other) < 0 ? one : other;
    }

    private static BigFraction full(Measure measure) {
      return BigFraction.of(4).multiply(BigFraction.of(measure.beats(), measure.beatType()));
    }

    /**
     * Returns the quarter notes between two clicks: those that the metronome is set to, if they fit
     * the beats of the measure, or else its beats, halved or in thirds if they are slow.
     */
    private BigFraction step(Measure measure) {
      boolean compound = measure.beats() > 3 && measure.beats() % 3 == 0 && measure.beatType() >= 8;
      BigFraction beat =
          BigFraction.of(4, measure.beatType()).multiply(BigFraction.of(compound ? 3 : 1));
      boolean fits =
          whole(beat.divide(click))
              || (whole(click.divide(beat)) && whole(full(measure).divide(click)));
      if (fits) {
        return click;
      }
      double perMinute = quarters(tempi.get(0).tempo()) / beat.doubleValue();
      return perMinute >= SLOW ? beat : beat.divide(BigFraction.of(compound ? 3 : 2));
    }

    private static boolean whole(BigFraction number) {
      return number.getDenominatorAsInt() == 1;
    }
  }
}
