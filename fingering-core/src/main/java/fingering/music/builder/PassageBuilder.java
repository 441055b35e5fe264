package fingering.music.builder;

import com.google.common.collect.ImmutableList;
import fingering.music.BeatUnit;
import fingering.music.Marks;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.PlayingStyle;
import fingering.music.Tempo;
import fingering.music.TempoChange;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Builds a passage in code, note after note. The result is the same as if the music were read from
 * a score. Not thread-safe.
 *
 * <pre>{@code
 * Passage passage =
 *     PassageBuilder.of(Instruments.standard().named("viola"))
 *         .key(-2)
 *         .meter(3, 4)
 *         .tempo("quarter=96")
 *         .pickup(QUARTER)
 *         .note("D4", QUARTER)
 *         .slur(EIGHTH, "G4", "A4", "Bb4", "C5")
 *         .rest(QUARTER)
 *         .build();
 * }</pre>
 *
 * <p>Pitches are written as in {@link Pitch#parse}, {@code Bb4}, as printed in the part: the double
 * bass sounds an octave lower. The key does not alter them. Bar lines follow from the meter; {@link
 * #bar} checks that one is where you expect it. A note that crosses a bar line is written as two,
 * with {@link #tie} between them. The last measure may be short, as it often is after a pickup.
 *
 * <p>A note beyond the instrument's range may be written. Plans leave it out, and {@link
 * Passage#unplayable} of the passage of a planner lists it.
 *
 * <p>Dynamics do not change a fingering, so a passage has none. There is no score either, into
 * which the marks of a plan could be written.
 *
 * <p>Music that cannot be written causes a {@link FingeringException} at once, which names measure
 * and beat and says what to do. After an exception, start again with a new builder.
 */
public final class PassageBuilder {
  private static final String PART_ID = "P1";
  private static final int MAX_TUPLET = 64;

  /** The measures after the first in which a tempo may still be that of the beginning. */
  private static final int OPENING_MEASURES = 1;

  private final Instrument instrument;
  private String title = "";
  private String partName;

  private final BuiltMeasures measures = new BuiltMeasures();
  private Tempo opening = Tempo.DEFAULT;
  private final List<TempoChange> tempi = new ArrayList<>();
  private final BuiltEvents events = new BuiltEvents(measures);

  /** The measure of the last note or rest, and the number of them in it, chords note by note. */
  private int noteMeasure;

  private int noteIndex;
  private boolean plucked;
  private PlayingStyle style = PlayingStyle.PLAIN;

  /** The factor of the lengths of notes in a tuplet. */
  private BigFraction scale = BigFraction.ONE;

  private PassageBuilder(Instrument instrument) {
    this.instrument = instrument;
    partName = instrument.name();
  }

  /** A builder of a passage without key signature, in 4/4, at {@link Tempo#DEFAULT}. */
  public static PassageBuilder of(Instrument instrument) {
    return new PassageBuilder(instrument);
  }

  /** Sets the title; without it there is none. */
  public PassageBuilder title(String newTitle) {
    title = newTitle;
    return this;
  }

  /** Sets the name of the part; without it, it is the name of the instrument. */
  public PassageBuilder partName(String name) {
    partName = name;
    return this;
  }

  /**
   * Sets the key signature from this measure on.
   *
   * @param newFifths the number of sharps, negative for flats, -7 to 7
   * @throws FingeringException if it is out of range, or a measure has begun
   */
  public PassageBuilder key(int newFifths) {
    measures.key(newFifths);
    return this;
  }

  /**
   * Sets the meter from this measure on.
   *
   * @param newBeats the upper number, 1 to 99
   * @param newBeatType the lower number: 1, 2, 4, 8, 16, 32 or 64
   * @throws FingeringException if there is no such meter, or a measure has begun
   */
  public PassageBuilder meter(int newBeats, int newBeatType) {
    measures.meter(newBeats, newBeatType);
    return this;
  }

  /**
   * Sets the tempo from here on. The first one applies from the beginning if it is in the first two
   * measures: a tempo is often printed after the pickup.
   *
   * @param mark a metronome mark, as in {@link Tempo#parse}: {@code quarter=96}
   * @throws FingeringException if it is not a metronome mark
   */
  public PassageBuilder tempo(String mark) {
    TempoChange change = new TempoChange(measures.time(), measures.placed(() -> Tempo.parse(mark)));
    if (tempi.isEmpty() && measures.index() <= OPENING_MEASURES) {
      opening = change.tempo();
    }
    tempi.removeIf(earlier -> earlier.start().equals(change.start()));
    tempi.add(change);
    return this;
  }

  /**
   * Begins with an incomplete measure of this length. It has the number 0, and its last beat is the
   * last of the meter. Set the meter before.
   *
   * @throws FingeringException if notes were added before, or it is not shorter than a measure
   */
  public PassageBuilder pickup(BeatUnit length) {
    if (!measures.empty() || !events.isEmpty()) {
      throw measures.refusal("a pickup comes before all notes and rests");
    }
    measures.pickup(length.quarters());
    return this;
  }

  /**
   * Adds a note.
   *
   * @param pitch the pitch as printed: {@code C4} is middle C
   * @throws FingeringException if it is not a pitch, or the note does not fit into the measure
   */
  public PassageBuilder note(String pitch, BeatUnit value) {
    return chord(value, pitch);
  }

  /**
   * Adds several notes of one value, one after the other.
   *
   * @throws FingeringException if one is not a pitch or does not fit into the measure
   */
  public PassageBuilder notes(BeatUnit value, String... pitches) {
    for (String pitch : pitches) {
      note(pitch, value);
    }
    return this;
  }

  /**
   * Adds a chord. One that a hand cannot hold is planned note by note; its {@code Grip} in the plan
   * is then {@code divided()}.
   *
   * @param pitches the pitches as printed, at least one, in any order
   * @throws FingeringException if one is not a pitch, or the chord does not fit into the measure
   */
  public PassageBuilder chord(BeatUnit value, String... pitches) {
    if (pitches.length == 0) {
      throw measures.refusal("a chord needs a note; write rest(…) for silence");
    }
    BigFraction length = fitting(value, "note", "write two notes with tie() between them");
    List<Note> notes = new ArrayList<>();
    for (String pitch : pitches) {
      notes.add(written(pitch, length));
    }
    events.chord(notes, plucked, style);
    measures.advance(length);
    return this;
  }

  /**
   * Adds a rest.
   *
   * @throws FingeringException if it does not fit into the measure, or a tie or a grace note leads
   *     to it
   */
  public PassageBuilder rest(BeatUnit value) {
    BigFraction length = fitting(value, "rest", "write two rests");
    events.rest();
    address();
    measures.advance(length);
    return this;
  }

  /**
   * Adds grace notes before the next note, played on its beat.
   *
   * @throws FingeringException if one is not a pitch, or a tie leads to it
   */
  public PassageBuilder grace(String... pitches) {
    for (String pitch : pitches) {
      events.grace(written(pitch, BigFraction.ZERO), plucked, style);
    }
    return this;
  }

  /**
   * Ties the note just added to the next one, of the same pitch. In chords it ties the notes that
   * both have.
   *
   * @throws FingeringException if no note comes before
   */
  public PassageBuilder tie() {
    events.tie();
    return this;
  }

  /**
   * Adds several notes of one value under a slur.
   *
   * @param pitches the pitches as printed, at least two
   * @throws FingeringException if one is not a pitch or does not fit into the measure, or there are
   *     fewer than two
   */
  public PassageBuilder slur(BeatUnit value, String... pitches) {
    return slur(under -> under.notes(value, pitches));
  }

  /**
   * Puts a slur over some notes: {@code slur(s -> s.note("G4", HALF).note("A4", QUARTER))}.
   *
   * @param notes adds the notes, at least two, to this builder
   * @throws FingeringException if there are fewer than two, or they cannot be added
   */
  public PassageBuilder slur(Consumer<PassageBuilder> notes) {
    events.beginSlur();
    notes.accept(this);
    events.endSlur();
    return this;
  }

  /**
   * Adds a tuplet. A triplet of eighths: {@code tuplet(3, 2, t -> t.notes(EIGHTH, "G4", "A4",
   * "B4"))}.
   *
   * @param count the number of notes, 1 to 64
   * @param inTimeOf the number of notes whose time they take, 1 to 64
   * @param notes adds the notes, with the values as printed, to this builder
   * @throws FingeringException if a number is out of range, the tuplet is not full, or its notes
   *     cannot be added
   */
  public PassageBuilder tuplet(int count, int inTimeOf, Consumer<PassageBuilder> notes) {
    if (count < 1 || count > MAX_TUPLET || inTimeOf < 1 || inTimeOf > MAX_TUPLET) {
      throw measures.refusal(
          "a tuplet of %d in the time of %d is not possible".formatted(count, inTimeOf));
    }
    BigFraction outside = scale;
    BigFraction began = measures.time();
    scale = scale.multiply(BigFraction.of(inTimeOf, count));
    notes.accept(this);
    scale = outside;
    BigFraction length = measures.time().subtract(began).divide(outside);
    if (length.signum() == 0 || length.getDenominator().bitCount() != 1) {
      throw measures.refusal(
          "the tuplet of %d in the time of %d is not full; add notes or rests to it"
              .formatted(count, inTimeOf));
    }
    return this;
  }

  /** Notes from here on are plucked. */
  public PassageBuilder pizzicato() {
    plucked = true;
    return this;
  }

  /** Notes from here on are bowed. */
  public PassageBuilder arco() {
    plucked = false;
    return this;
  }

  /** Sets how the notes from here on are played: as under <i>dolce</i>, or with dots. */
  public PassageBuilder style(PlayingStyle newStyle) {
    style = newStyle;
    return this;
  }

  /**
   * Sets the marks printed at the note just added, on all notes of a chord: a finger, a string, an
   * accent, a trill.
   *
   * @throws FingeringException if no note comes before, or it only continues a tie
   */
  public PassageBuilder marks(Marks marks) {
    events.marks(marks);
    return this;
  }

  /**
   * Checks that a bar line is here.
   *
   * @throws FingeringException if the measure is not full
   */
  public PassageBuilder bar() {
    measures.requireFull();
    return this;
  }

  /**
   * The passage. Further notes may be added afterwards for a longer one.
   *
   * @throws FingeringException if there is no note, a tie or a grace note leads nowhere, or the
   *     pickup is not full
   */
  public Passage build() {
    events.requireFinished("the end");
    measures.requirePickupFull();
    if (events.isEmpty()) {
      throw measures.refusal("the passage has no notes; add some with note(…)");
    }
    List<TempoChange> changes = new ArrayList<>(tempi);
    if (changes.isEmpty() || changes.get(0).start().signum() > 0) {
      changes.add(0, new TempoChange(BigFraction.ZERO, opening));
    }
    return new Passage(
        title,
        PART_ID,
        partName,
        instrument,
        ImmutableList.copyOf(changes),
        measures.all(),
        BuiltMoments.of(events.finished(), new TempoClock(changes)),
        ImmutableList.of());
  }

  private BigFraction fitting(BeatUnit value, String kind, String remedy) {
    BigFraction length = value.quarters().multiply(scale);
    boolean inTuplet = !scale.equals(BigFraction.ONE);
    measures.requireRoom(
        length,
        (value.name().equals("eighth") && value.dots() == 0 ? "an " : "a ") + value + " " + kind,
        inTuplet ? "move the tuplet to the next measure" : remedy);
    return length;
  }

  private Note written(String text, BigFraction length) {
    Pitch pitch = measures.placed(() -> Pitch.parse(text));
    Pitch sounding = measures.placed(() -> pitch.plusOctaves(instrument.writtenOctaves()));
    return new Note(
        address(), measures.place(), pitch, sounding, measures.time(), length, Marks.NONE);
  }

  /** The address of the next note or rest. */
  private NoteAddress address() {
    if (noteMeasure != measures.index()) {
      noteMeasure = measures.index();
      noteIndex = 0;
    }
    return new NoteAddress(0, noteMeasure, noteIndex++);
  }
}
