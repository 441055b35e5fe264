package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.KeySignature;
import fingering.music.Measure;
import fingering.music.NoteAddress;
import fingering.music.Place;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Forward;
import org.audiveris.proxymusic.Key;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Offset;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.Transpose;
import org.audiveris.proxymusic.YesNo;

/** Walks a part from its first element to its last and keeps count of the time. */
final class PartWalk {
  private static final BigFraction ZERO = BigFraction.ZERO;

  /** No note and no rest is longer; a whole opera is not. In quarter notes. */
  private static final int MOST_QUARTERS = 100_000;

  /** The common division of real music has fewer than 64 bits. */
  private static final int MOST_BITS = 512;

  private final int part;
  private final String name;

  private final List<Measure> measures = new ArrayList<>();
  private final ImmutableSet.Builder<Integer> implicit = ImmutableSet.builder();
  private final List<WrittenNote> notes = new ArrayList<>();
  private final ImmutableList.Builder<TempoMark> tempi = ImmutableList.builder();
  private final PluckingMarks pluckings = new PluckingMarks();
  private final StringMarks strings = new StringMarks();
  private final PositionMarks positions = new PositionMarks();
  private final TuningMarks tunings = new TuningMarks();
  private final UpperNotes uppers = new UpperNotes();
  private final PrintCollector print = new PrintCollector();
  private Optional<Clef> firstClef = Optional.empty();
  private boolean sings;
  private boolean transposes;
  private boolean lowClef;
  private int microtones;
  private int unpitched;

  private final Map<BigDecimal, BigFraction> durations = new HashMap<>();
  private final Sums sums = new Sums();
  private BigFraction divisions = BigFraction.ONE;
  private Meter meter = Meter.COMMON;
  private int fifths;
  private Optional<Transposition> transposition = Optional.empty();

  private String number = "";
  private BigFraction measureStart = ZERO;
  private BigFraction cursor = ZERO;
  private BigFraction reached = ZERO;
  private BigFraction chordOnset = ZERO;
  private Meter measureMeter = Meter.COMMON;
  private int measureFifths;
  private String rehearsal = "";
  private String voice = "1";
  private int noteIndex;

  /**
   * Stands at the beginning of the part of that index.
   *
   * @param name the part's name, for messages
   */
  PartWalk(int part, String name) {
    this.part = part;
    this.name = name;
  }

  /** Stands at the beginning of the same part again, with nothing met. */
  PartWalk anew() {
    return new PartWalk(part, name);
  }

  /** Ends the walk, and tells all that was met on it. */
  PartTimeline end() {
    pluckings.mark(notes);
    ImmutableList<PartTimeline.Slot> slots = PartTimeline.slots(notes);
    return new PartTimeline(
            ImmutableList.copyOf(measures),
            implicit.build(),
            slots,
            tempi.build(),
            pluckings.changes(),
            strings.stretches(slots, measures),
            positions.stretches(slots, measures),
            tunings.all(),
            print.part(measures),
            transposes,
            lowClef,
            microtones,
            unpitched)
        .withoutClusters(name);
  }

  /** The first clef of the part, on whichever staff. */
  Optional<Clef> firstClef() {
    return firstClef;
  }

  /** Whether words are sung to it. */
  boolean sings() {
    return sings;
  }

  /** Walks through the next measure. */
  void measure(ScorePartwise.Part.Measure measure) {
    int index = measures.size();
    number =
        measure.getNumber() == null
            ? String.valueOf(index + 1)
            : XmlText.printable(measure.getNumber());
    cursor = ZERO;
    reached = ZERO;
    chordOnset = ZERO;
    measureMeter = meter;
    measureFifths = fifths;
    rehearsal = "";
    noteIndex = 0;
    if (measure.getImplicit() == YesNo.YES) {
      implicit.add(index);
    }
    measure.getNoteOrBackupOrForward().forEach(this::element);
    uppers.endMeasure(notes);
    print.endMeasure(index);
    BigFraction length = reached.signum() > 0 ? reached : measureMeter.length();
    measures.add(
        new Measure(
            index,
            number,
            measureStart,
            length,
            measureFifths,
            measureMeter.beats(),
            measureMeter.beatType(),
            rehearsal));
    measureStart = measureStart.add(length);
    if (measureStart.getDenominator().bitLength() > MOST_BITS) {
      throw unreadable("has a length that fits no common division with those before", "measure");
    }
  }

  private void element(Object element) {
    if (element instanceof Note note) {
      note(note);
      noteIndex++;
    } else if (element instanceof Backup backup) {
      move(length(backup.getDuration(), "backup").negate(), "backup");
    } else if (element instanceof Forward forward) {
      move(length(forward.getDuration(), "forward"), "forward");
    } else if (element instanceof Attributes attributes) {
      attributes(attributes);
    } else if (element instanceof Direction direction) {
      direction(direction);
    } else if (element instanceof Barline barline) {
      print.bar(barline, measures.size());
    } else if (element instanceof Sound sound) {
      sound(sound, cursor, true);
    }
  }

  private void move(BigFraction by, String what) {
    BigFraction to = sums.of(cursor, by);
    // Lengths without a common division make ever longer fractions, and each sum takes longer.
    if (to.getDenominator().bitLength() > MOST_BITS) {
      throw unreadable("has a length that fits no common division with those before", what);
    }
    cursor = to.signum() < 0 ? ZERO : to;
    reached = max(reached, cursor);
  }

  private static BigFraction max(BigFraction a, BigFraction b) {
    return Quarters.compare(a, b) >= 0 ? a : b;
  }

  private BigFraction length(BigDecimal duration, String what) {
    if (duration == null || duration.signum() < 0) {
      throw unreadable("has no length that can be read", what);
    }
    refuseWild(duration, what);
    BigFraction length = durations.computeIfAbsent(duration, d -> fraction(d).divide(divisions));
    if (Quarters.value(length) > MOST_QUARTERS) {
      throw unreadable("is longer than %d quarter notes".formatted(MOST_QUARTERS), what);
    }
    return length;
  }

  // A number such as 1e999999999 would fill the memory as soon as it is reckoned with.
  private void refuseWild(BigDecimal value, String what) {
    if (TempoMark.isWild(value)) {
      throw unreadable("has a number out of all range", what);
    }
  }

  private static BigFraction fraction(BigDecimal value) {
    return value.scale() <= 0
        ? BigFraction.of(value.toBigIntegerExact())
        : BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
  }

  private UnreadableScoreException unreadable(String fault, String what) {
    BigFraction beat = cursor.divide(measureMeter.beat()).add(BigFraction.ONE);
    Place place = new Place(measures.size(), number, cursor, beat);
    return new UnreadableScoreException(
        "A %s in %s, %s, %s: mend that measure in your notation program and export the score again."
            .formatted(what, name, place, fault));
  }

  private void attributes(Attributes attributes) {
    if (attributes.getDivisions() != null) {
      if (attributes.getDivisions().signum() <= 0) {
        throw unreadable("does not divide by a number above 0", "change of divisions");
      }
      refuseWild(attributes.getDivisions(), "change of divisions");
      divisions = fraction(attributes.getDivisions());
      durations.clear();
    }
    for (Key key : attributes.getKey()) {
      int before = fifths;
      fifths = key.getFifths() == null ? 0 : KeySignature.fifths(key.getFifths());
      print.key(before, fifths, cursor);
    }
    for (Time time : attributes.getTime()) {
      meter = Meter.of(time).orElse(meter);
    }
    for (Transpose transpose : attributes.getTranspose()) {
      transposes = true;
      transposition = Optional.of(transposition(transpose));
    }
    attributes.getStaffDetails().forEach(details -> tunings.staff(details, number));
    for (Clef clef : attributes.getClef()) {
      firstClef = firstClef.or(() -> Optional.of(clef));
      print.clef(clef, cursor);
      lowClef |= clef.getClefOctaveChange() != null && clef.getClefOctaveChange().signum() < 0;
    }
    if (cursor.signum() == 0) {
      measureMeter = meter;
      measureFifths = fifths;
    }
  }

  private Transposition transposition(Transpose transpose) {
    int octaves = transpose.getOctaveChange() == null ? 0 : transpose.getOctaveChange().intValue();
    int chromatic =
        transpose.getChromatic() == null ? 0 : semitones(transpose.getChromatic(), "transposition");
    int semitones = chromatic + Pitch.OCTAVE * octaves;
    return transpose.getDiatonic() == null
        ? Transposition.ofSemitones(semitones)
        : new Transposition(transpose.getDiatonic().intValue() + 7 * octaves, semitones);
  }

  private int semitones(BigDecimal value, String what) {
    refuseWild(value, what);
    try {
      return value.setScale(0, RoundingMode.HALF_UP).intValueExact();
    } catch (ArithmeticException e) {
      throw unreadable("is out of all range", what);
    }
  }

  private void direction(Direction direction) {
    BigFraction at = offset(direction.getOffset(), false);
    List<String> words = new ArrayList<>();
    for (DirectionType type : direction.getDirectionType()) {
      for (FormattedTextId mark : type.getRehearsal()) {
        if (rehearsal.isEmpty() && mark.getValue() != null) {
          rehearsal = XmlText.printable(mark.getValue());
        }
      }
      if (type.getMetronome() != null) {
        TempoMark.of(type.getMetronome())
            .ifPresent(tempo -> tempi.add(new TempoMark(measures.size(), at, tempo, false)));
      }
      if (type.getScordatura() != null) {
        tunings.sign(type.getScordatura(), number);
      }
      for (Object word : type.getWordsOrSymbol()) {
        if (word instanceof FormattedTextId text && text.getValue() != null) {
          words.add(text.getValue());
        }
      }
    }
    String forVoice = direction.getVoice() == null ? "" : direction.getVoice().strip();
    print.direction(direction, measures.size(), at);
    boolean once = pluckings.words(words, measureStart.add(at), forVoice);
    String said = String.join(" ", words);
    strings.direction(direction, said, number, measureStart.add(at), forVoice);
    positions.direction(direction, said, measures.size(), measureStart.add(at), forVoice);
    if (direction.getSound() != null) {
      sound(direction.getSound(), at, !once);
    }
  }

  private void sound(Sound sound, BigFraction place, boolean plucks) {
    BigFraction at = sound.getOffset() == null ? place : offset(sound.getOffset(), true);
    TempoMark.of(sound)
        .ifPresent(tempo -> tempi.add(new TempoMark(measures.size(), at, tempo, true)));
    if (plucks && sound.getPizzicato() != null) {
      pluckings.sound(sound.getPizzicato() == YesNo.YES, measureStart.add(at));
    }
  }

  // The offset of a direction moves only its print, unless it says that it is heard too.
  private BigFraction offset(Offset offset, boolean heard) {
    if (offset == null || offset.getValue() == null || !(heard || offset.getSound() == YesNo.YES)) {
      return cursor;
    }
    refuseWild(offset.getValue(), "direction");
    BigFraction at = cursor.add(fraction(offset.getValue()).divide(divisions));
    return at.signum() < 0 ? ZERO : at;
  }

  private void note(Note note) {
    sings |= !note.getLyric().isEmpty();
    // A note that takes no time is played like a grace note, whatever the file calls it.
    boolean grace =
        note.getGrace() != null || (note.getDuration() != null && note.getDuration().signum() == 0);
    boolean chord = note.getChord() != null;
    BigFraction length = grace ? ZERO : length(note.getDuration(), "note");
    BigFraction onset = chord ? chordOnset : cursor;
    if (note.getVoice() != null) {
      voice = note.getVoice().strip();
    } else if (!chord) {
      voice = "1";
    }
    print.dynamics(note, measures.size(), onset);
    PrintedMarks marks = new PrintedMarks(note);
    if (note.getCue() == null && note.getRest() == null) {
      if (note.getPitch() != null) {
        WrittenNote written = pitched(note, marks, onset, length, grace, chord);
        notes.add(written);
        print(note, marks.lines(), onset, length, grace, Optional.of(written.pitch()));
      } else {
        unpitched++;
      }
    } else if (note.getPrintObject() != YesNo.NO) {
      // A rest of a cue says nothing; the part has its own.
      if (note.getCue() == null) {
        print(note, marks.lines(), onset, length, grace, Optional.empty());
      } else if (note.getPitch() != null) {
        print(note, marks.lines(), onset, length, grace, Optional.of(pitch(note.getPitch())));
      }
    }
    if (chord) {
      reached = max(reached, sums.of(onset, length));
    } else {
      chordOnset = onset;
      move(length, "note");
    }
  }

  private void print(
      Note note,
      WrittenNote.Lines lines,
      BigFraction onset,
      BigFraction length,
      boolean grace,
      Optional<Pitch> pitch) {
    NoteAddress address = new NoteAddress(part, measures.size(), noteIndex);
    print.note(
        PrintedNotes.of(note, lines.tieStart(), address, onset, length, grace, voice, pitch),
        lines);
  }

  private WrittenNote pitched(
      Note note,
      PrintedMarks printed,
      BigFraction onset,
      BigFraction length,
      boolean grace,
      boolean chord) {
    Pitch pitch = pitch(note.getPitch());
    // A tie carries an accidental over the bar line to its own note only (common practice).
    if (note.getAccidental() != null || !printed.lines().tieStop()) {
      uppers.shows(pitch, onset);
    }
    printed.ornament().ifPresent(trill -> uppers.trill(notes.size(), trill, fifths));
    return new WrittenNote(
        new NoteAddress(part, measures.size(), noteIndex),
        onset,
        measureStart.add(onset),
        length,
        grace,
        chord,
        voice,
        pitch,
        transposition,
        Optional.empty(),
        HarmonicSign.of(note, printed.harmonic()),
        printed.marks(),
        printed.lines(),
        printed.plucked());
  }

  private Pitch pitch(org.audiveris.proxymusic.Pitch pitch) {
    if (pitch.getStep() == null) {
      throw unreadable("has no pitch that can be read", "note");
    }
    int alter = 0;
    if (pitch.getAlter() != null) {
      alter = semitones(pitch.getAlter(), "note");
      if (pitch.getAlter().stripTrailingZeros().scale() > 0) {
        microtones++;
      }
    }
    try {
      return new Pitch(Letter.valueOf(pitch.getStep().name()), alter, pitch.getOctave());
    } catch (IllegalArgumentException e) {
      throw unreadable("is out of all range", "note");
    }
  }
}
