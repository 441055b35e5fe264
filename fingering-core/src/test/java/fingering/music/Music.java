package fingering.music;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Builds passages for tests. Events are separated by blanks: {@code C3/1} is a quarter note, {@code
 * r/0.5} an eighth rest, {@code C3/1:3} a triplet eighth, {@code ~D3/1} slurred to the one before,
 * {@code C3+E3/1} a double stop, {@code C3*4+E3/1} the same with the C held for four quarters.
 * After the length come {@code !} for an accent, {@code tr}, {@code pz} for pizzicato, {@code gr}
 * for a grace note (as long as given), {@code si} for singing and {@code de} for detached notes,
 * {@code @2} for a printed finger and {@code $3} for a printed string.
 */
public final class Music {
  private static final Pattern EVENT =
      Pattern.compile(
          "(~?)([^/]+)/([\\d.:]+)(!?)(tr)?(pz)?(gr)?(si|de)?(?:@([0-4T]))?(?:\\$([1-8]))?");
  private static final Splitter BLANKS =
      Splitter.onPattern("\\s+").omitEmptyStrings().trimResults();
  private static final Splitter PLUS = Splitter.on('+');

  private final Instrument instrument;
  private Tempo tempo = Tempo.DEFAULT;
  private int beats = 4;
  private int beatType = 4;
  private final List<Note> notes = new ArrayList<>();

  private Music(String instrument) {
    this.instrument = Instruments.standard().named(instrument);
  }

  public static Music on(String instrument) {
    return new Music(instrument);
  }

  public static Music violin() {
    return on("violin");
  }

  public static Music viola() {
    return on("viola");
  }

  public static Music cello() {
    return on("cello");
  }

  public Music tempo(String mark) {
    tempo = Tempo.parse(mark);
    return this;
  }

  public Music meter(int beats, int beatType) {
    this.beats = beats;
    this.beatType = beatType;
    return this;
  }

  /** The passage of those events, from the start of measure 1. */
  public Passage notes(String events) {
    ImmutableList.Builder<Moment> moments = ImmutableList.builder();
    notes.clear();
    BigFraction now = BigFraction.ZERO;
    BigFraction silentFrom = BigFraction.ZERO;
    for (String event : BLANKS.split(events)) {
      Matcher matcher = EVENT.matcher(event);
      if (!matcher.matches()) {
        throw new IllegalArgumentException("not an event: " + event);
      }
      BigFraction length = quarters(matcher.group(3));
      BigFraction start = now;
      now = now.add(length);
      if (matcher.group(2).equals("r")) {
        continue;
      }
      ImmutableList<Note> held =
          notes.stream()
              .filter(note -> note.end().compareTo(start) > 0)
              .sorted(Comparator.comparingInt(Note::midi))
              .collect(ImmutableList.toImmutableList());
      ImmutableList<Note> starting = startingNotes(matcher, start, length);
      BigFraction end =
          starting.stream().map(Note::end).max(Comparator.naturalOrder()).orElseThrow();
      BigFraction rest = start.subtract(silentFrom);
      boolean first = notes.size() == starting.size();
      moments.add(
          new Moment(
              starting,
              held,
              micros(start),
              micros(end.subtract(start)),
              first || rest.signum() < 0 ? 0 : micros(rest),
              !matcher.group(1).isEmpty(),
              matcher.group(7) != null,
              matcher.group(6) != null,
              style(matcher),
              Surroundings.ALONE));
      silentFrom = end.compareTo(silentFrom) > 0 ? end : silentFrom;
    }
    return new Passage(
        "Test",
        "P1",
        instrument.name(),
        instrument,
        tempo,
        measures(),
        Moment.withSurroundings(moments.build()),
        ImmutableList.of());
  }

  private static PlayingStyle style(Matcher matcher) {
    return "si".equals(matcher.group(8))
        ? PlayingStyle.SINGING
        : "de".equals(matcher.group(8)) ? PlayingStyle.DETACHED : PlayingStyle.PLAIN;
  }

  /** A trill with the tone above, in any key. */
  private static Marks trilled(Marks marks, Pitch pitch) {
    return new Marks(
        Optional.of(Pitch.spelled(pitch.letterNumber() + 1, pitch.midi() + 2)),
        marks.accent(),
        marks.harmonic(),
        marks.leftPlucked(),
        marks.finger(),
        marks.string());
  }

  private ImmutableList<Note> startingNotes(
      Matcher matcher, BigFraction start, BigFraction length) {
    Marks marks =
        new Marks(
            Optional.empty(),
            !matcher.group(4).isEmpty(),
            Optional.empty(),
            false,
            Optional.ofNullable(matcher.group(9)),
            matcher.group(10) == null
                ? OptionalInt.empty()
                : OptionalInt.of(Integer.parseInt(matcher.group(10))));
    List<Note> starting = new ArrayList<>();
    for (String one : PLUS.split(matcher.group(2))) {
      int star = one.indexOf('*');
      Pitch pitch = Pitch.parse(star < 0 ? one : one.substring(0, star));
      BigFraction sounds = star < 0 ? length : quarters(one.substring(star + 1));
      Place place = place(start);
      int inMeasure =
          (int)
              notes.stream().filter(n -> n.place().measureIndex() == place.measureIndex()).count();
      NoteAddress address = new NoteAddress(0, place.measureIndex(), inMeasure);
      Pitch written = pitch.plusOctaves(-instrument.writtenOctaves());
      Marks own = matcher.group(5) == null ? marks : trilled(marks, pitch);
      Note note = new Note(address, place, written, pitch, start, sounds, own);
      notes.add(note);
      starting.add(note);
    }
    return ImmutableList.sortedCopyOf(Comparator.comparingInt(Note::midi), starting);
  }

  private BigFraction measureLength() {
    return BigFraction.of(4 * beats, beatType);
  }

  private Place place(BigFraction start) {
    int index = start.divide(measureLength()).intValue();
    BigFraction onset = start.subtract(measureLength().multiply(index));
    BigFraction beat = onset.multiply(beatType).divide(4).add(1);
    return new Place(index, Integer.toString(index + 1), onset, beat);
  }

  private ImmutableList<Measure> measures() {
    TreeSet<Integer> indices = new TreeSet<>();
    notes.forEach(note -> indices.add(note.place().measureIndex()));
    ImmutableList.Builder<Measure> measures = ImmutableList.builder();
    for (int i = 0; i <= indices.last(); i++) {
      BigFraction start = measureLength().multiply(i);
      String number = Integer.toString(i + 1);
      measures.add(new Measure(i, number, start, measureLength(), 0, beats, beatType, ""));
    }
    return measures.build();
  }

  private long micros(BigFraction quarters) {
    return Math.round(
        quarters.multiply(60_000_000).divide(tempo.quartersPerMinute()).doubleValue());
  }

  private static BigFraction quarters(String text) {
    int colon = text.indexOf(':');
    if (colon > 0) {
      return BigFraction.of(
          Integer.parseInt(text.substring(0, colon)), Integer.parseInt(text.substring(colon + 1)));
    }
    return BigFraction.from(Double.parseDouble(text));
  }
}
