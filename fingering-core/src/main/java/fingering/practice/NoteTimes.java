package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.music.TempoChange;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * When each note of a passage sounds at a tempo, and when the metronome clicks, with one measure to
 * count in: one table for everything that plays a passage. A pickup is counted in with its whole
 * measure as well. Repeats are played as often as the passage has them. Times are in microseconds
 * from the first click.
 *
 * @param sounds the notes, in order of time
 * @param clicks the clicks, in order of time
 * @param tempi the tempi, in order of time; the first begins at 0
 * @param countIn the length of the count-in
 */
public record NoteTimes(
    ImmutableList<Sound> sounds,
    ImmutableList<Click> clicks,
    ImmutableList<Change> tempi,
    long countIn) {
  private static final double MINUTE = 60e6;

  /** Clicks slower than this, a minute, are subdivided (common practice, no source). */
  private static final double SLOW = 60;

  /**
   * A note that sounds.
   *
   * @param note the note
   * @param pizzicato whether it is plucked
   * @param start its start
   * @param length its length, above 0
   */
  public record Sound(Note note, boolean pizzicato, long start, long length) {}

  /**
   * A click of the metronome.
   *
   * @param start its time
   * @param first whether it is the first of a measure
   */
  public record Click(long start, boolean first) {}

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
   * @param opening the tempo at the beginning; later tempi change in proportion
   */
  public static NoteTimes of(Passage passage, Tempo opening) {
    return new Builder(passage, opening).build();
  }

  private static final class Builder {
    private final Passage passage;
    private final double slower;
    private final ImmutableList<TempoChange> tempi;
    private final BigFraction click;

    Builder(Passage passage, Tempo opening) {
      this.passage = passage;
      slower = quarters(passage.tempo()) / quarters(opening);
      ImmutableList.Builder<TempoChange> scaled = ImmutableList.builder();
      scaled.add(new TempoChange(passage.measures().get(0).start(), opening));
      passage.tempi().stream()
          .skip(1)
          .map(change -> new TempoChange(change.start(), scaled(change.tempo())))
          .forEach(scaled::add);
      tempi = scaled.build();
      click = BeatConversion.clicks(opening).unit().quarters();
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
      double micros = 0;
      for (int i = 0; i < tempi.size(); i++) {
        boolean last = i == tempi.size() - 1 || tempi.get(i + 1).start().compareTo(at) >= 0;
        BigFraction end = last ? at : tempi.get(i + 1).start();
        double length = end.subtract(tempi.get(i).start()).doubleValue();
        micros += length * MINUTE / quarters(tempi.get(i).tempo());
        if (last) {
          break;
        }
      }
      return micros;
    }

    NoteTimes build() {
      Measure first = passage.measures().get(0);
      BigFraction full = full(first);
      BigFraction missing =
          full.compareTo(first.length()) > 0 ? full.subtract(first.length()) : BigFraction.ZERO;
      double quarter = MINUTE / quarters(tempi.get(0).tempo());
      double countIn = full.add(missing).doubleValue() * quarter;
      List<Click> clicks = new ArrayList<>();
      BigFraction step = step(first);
      for (BigFraction at = BigFraction.ZERO;
          at.compareTo(full.add(missing)) < 0;
          at = at.add(step)) {
        boolean beginning = at.signum() == 0 || at.equals(full);
        clicks.add(new Click(Math.round(at.doubleValue() * quarter), beginning));
      }
      for (Measure measure : passage.measures()) {
        BigFraction before = measure.equals(first) ? missing : BigFraction.ZERO;
        BigFraction each = step(measure);
        for (BigFraction at = before; at.subtract(before).compareTo(measure.length()) < 0; ) {
          clicks.add(
              new Click(
                  Math.round(countIn + micros(measure.start().add(at).subtract(before))),
                  at.signum() == 0));
          at = at.add(each);
        }
      }
      return new NoteTimes(
          sounds(countIn), ImmutableList.copyOf(clicks), changes(countIn), Math.round(countIn));
    }

    private ImmutableList<Sound> sounds(double countIn) {
      ImmutableList.Builder<Sound> sounds = ImmutableList.builder();
      for (Moment moment : passage.moments()) {
        double start = countIn + moment.startMicros() * slower;
        for (Note note : moment.starting()) {
          double end =
              moment.grace() ? start + moment.soundMicros() * slower : countIn + micros(note.end());
          long from = Math.round(start);
          sounds.add(
              new Sound(note, moment.pizzicato(), from, Math.max(1, Math.round(end) - from)));
        }
      }
      return sounds.build();
    }

    private ImmutableList<Change> changes(double countIn) {
      ImmutableList.Builder<Change> changes = ImmutableList.builder();
      Measure last = passage.measures().get(passage.measures().size() - 1);
      BigFraction end = last.start().add(last.length());
      for (int i = 0; i < tempi.size(); i++) {
        TempoChange change = tempi.get(i);
        if (i == 0 || change.start().compareTo(end) < 0) {
          long start = i == 0 ? 0 : Math.round(countIn + micros(change.start()));
          changes.add(new Change(start, change.tempo()));
        }
      }
      return changes.build();
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
