package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.KeySignature;
import fingering.music.Measure;
import fingering.music.NoteAddress;
import fingering.musicxml.element.FilePitch;
import fingering.musicxml.element.HarmonicSign;
import fingering.musicxml.element.Meter;
import fingering.musicxml.element.NoteNotations;
import fingering.musicxml.element.NoteTime;
import fingering.musicxml.element.PrintedLength;
import fingering.musicxml.element.TempoMark;
import fingering.musicxml.element.TempoWord;
import fingering.musicxml.element.Transposition;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.print.PrintCollector;
import fingering.musicxml.timeline.Fault;
import fingering.musicxml.timeline.Faults;
import fingering.musicxml.timeline.LeftOut;
import fingering.musicxml.timeline.MeasureNames;
import fingering.musicxml.timeline.PartClock;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.PizzicatoMarks;
import fingering.musicxml.timeline.PositionMarks;
import fingering.musicxml.timeline.StringMarks;
import fingering.musicxml.timeline.StyleMarks;
import fingering.musicxml.timeline.TrillUpperNotes;
import fingering.musicxml.timeline.TuningMarks;
import fingering.musicxml.xml.XmlText;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.List;
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
import org.audiveris.proxymusic.MeasureStyle;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Offset;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.StaffDetails;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.Transpose;
import org.audiveris.proxymusic.YesNo;
import org.jspecify.annotations.Nullable;

/** Reads a part, measure by measure. {@link PartClock} counts the time. */
final class PartReader {
  private final int part;
  private final String name;
  private final Faults faults = new Faults();
  private final PartClock clock;

  private final List<Measure> measures = new ArrayList<>();
  private final MeasureNames names = new MeasureNames();
  private final ImmutableSet.Builder<Integer> implicit = ImmutableSet.builder();
  private final List<WrittenNote> notes = new ArrayList<>();
  private final ImmutableList.Builder<TempoMark> tempi = ImmutableList.builder();
  private final ImmutableList.Builder<TempoWord> tempoWords = ImmutableList.builder();
  private final StyleMarks styles = new StyleMarks();
  private final PizzicatoMarks pizzicato = new PizzicatoMarks();
  private final StringMarks strings = new StringMarks();
  private final PositionMarks positions = new PositionMarks();
  private final TuningMarks tunings = new TuningMarks();
  private final TrillUpperNotes trills = new TrillUpperNotes();
  private final PrintCollector print = new PrintCollector();
  private Optional<Clef> firstClef = Optional.empty();
  private boolean hasLyrics;
  private boolean transposes;
  private boolean lowClef;
  private int microtones;
  private int unpitched;
  private int unprinted;

  private int fifths;
  private Optional<Transposition> transposition = Optional.empty();

  private int measureFifths;
  private String rehearsal = "";
  private String voice = "1";
  private int noteIndex;
  private boolean chordBegun;
  private boolean shown;

  /**
   * Starts at the beginning of a part.
   *
   * @param part index of the part, from 0
   * @param name the part's name, for messages
   */
  PartReader(int part, String name) {
    this.part = part;
    this.name = name;
    this.clock = new PartClock(faults);
  }

  /** Returns a reader at the beginning of the same part. */
  PartReader restarted() {
    return new PartReader(part, name);
  }

  /**
   * Ends the part and returns its content.
   *
   * @throws UnreadableScoreException if too many notes begin together
   */
  PartTimeline end() {
    pizzicato.mark(notes);
    ImmutableList<PartTimeline.Slot> slots = PartTimeline.slots(notes);
    return new PartTimeline(
            ImmutableList.copyOf(measures),
            implicit.build(),
            slots,
            tempi.build(),
            tempoWords.build(),
            pizzicato.changes(),
            styles.changes(),
            strings.stretches(slots, measures),
            positions.stretches(slots, measures),
            tunings.all(),
            print.part(measures),
            transposes,
            lowClef,
            new LeftOut(microtones, unpitched, unprinted, faults.remarks()))
        .checkSlots(name);
  }

  /** Returns the first clef of the part, on any staff. */
  Optional<Clef> firstClef() {
    return firstClef;
  }

  /** Returns whether the part has lyrics. */
  boolean hasLyrics() {
    return hasLyrics;
  }

  /** Reads the next measure. What cannot be read is left out and remarked on. */
  void measure(ScorePartwise.Part.Measure measure) {
    int index = clock.measure();
    boolean unprinted = measure.getImplicit() == YesNo.YES;
    clock.beginMeasure(
        names.next(
            measure.getNumber() == null
                ? String.valueOf(index + 1)
                : XmlText.printable(measure.getNumber()),
            unprinted));
    measureFifths = fifths;
    rehearsal = "";
    noteIndex = 0;
    if (unprinted) {
      implicit.add(index);
    }
    measure.getNoteOrBackupOrForward().forEach(this::element);
    trills.endMeasure(notes);
    print.endMeasure(index, !unprinted);
    measures.add(clock.endMeasure(measureFifths, rehearsal));
  }

  private void element(Object element) {
    if (element instanceof Note note) {
      note(note);
      noteIndex++;
    } else if (element instanceof Backup backup) {
      clock.backup(backup.getDuration());
    } else if (element instanceof Forward forward) {
      clock.forward(forward.getDuration());
    } else if (element instanceof Attributes attributes) {
      attributes(attributes);
    } else if (element instanceof Direction direction) {
      direction(direction);
    } else if (element instanceof Barline barline) {
      print.bar(barline, clock.measure(), clock.here());
    } else if (element instanceof Sound sound) {
      sound(sound, clock.here(), true);
    }
  }

  private void attributes(Attributes attributes) {
    if (attributes.getDivisions() != null) {
      clock.divisions(attributes.getDivisions());
    }
    for (Key key : attributes.getKey()) {
      int before = fifths;
      fifths = key.getFifths() == null ? 0 : KeySignature.fifths(key.getFifths());
      if (key.getFifths() == null && key.getNonTraditionalKey().isEmpty()) {
        clock.fault(Fault.KEY);
      }
      print.key(key, before, fifths, clock.here());
    }
    for (Time time : attributes.getTime()) {
      Optional<Meter> meter = Meter.of(time);
      meter.ifPresent(clock::meter);
      if (meter.isEmpty() && time.getSenzaMisura() == null) {
        clock.fault(Fault.TIME);
      }
      print.time(time, clock.here());
    }
    for (MeasureStyle style : attributes.getMeasureStyle()) {
      print.style(style);
    }
    for (Transpose transpose : attributes.getTranspose()) {
      Optional<Transposition> stated = Transposition.of(transpose);
      transposes |= stated.isPresent();
      transposition = stated.or(() -> transposition);
      if (stated.isEmpty()) {
        clock.fault(Fault.TRANSPOSITION);
      }
    }
    for (StaffDetails details : attributes.getStaffDetails()) {
      if (!tunings.staff(details, clock.number())) {
        clock.fault(Fault.TUNING);
      }
    }
    for (Clef clef : attributes.getClef()) {
      firstClef = firstClef.or(() -> Optional.of(clef));
      print.clef(clef, clock.here());
      lowClef |= clef.getClefOctaveChange() != null && clef.getClefOctaveChange().signum() < 0;
    }
    if (clock.atMeasureStart()) {
      measureFifths = fifths;
    }
  }

  private void direction(Direction direction) {
    BigFraction printedAt = moved(direction.getOffset());
    // The offset of a direction moves only its print, unless it says that it moves the sound too.
    boolean moves = direction.getOffset() != null && direction.getOffset().getSound() == YesNo.YES;
    BigFraction at = moves ? printedAt : clock.here();
    List<String> words = new ArrayList<>();
    for (DirectionType type : direction.getDirectionType()) {
      for (FormattedTextId mark : type.getRehearsal()) {
        if (rehearsal.isEmpty() && mark.getValue() != null) {
          rehearsal = XmlText.printable(mark.getValue());
        }
      }
      if (type.getMetronome() != null) {
        TempoMark.of(type.getMetronome())
            .ifPresent(tempo -> tempi.add(new TempoMark(clock.measure(), at, tempo, false)));
      }
      if (type.getScordatura() != null) {
        if (!tunings.scordatura(type.getScordatura(), clock.number())) {
          clock.fault(Fault.TUNING);
        }
      }
      for (Object word : type.getWordsOrSymbol()) {
        if (word instanceof FormattedTextId text && text.getValue() != null) {
          words.add(text.getValue());
        }
      }
    }
    String forVoice = direction.getVoice() == null ? "" : direction.getVoice().strip();
    print.direction(direction, clock.measure(), printedAt);
    BigFraction when = clock.start().add(at);
    boolean single = pizzicato.words(words, when, forVoice);
    String text = String.join(" ", words);
    strings.direction(direction, text, clock.measure(), when, forVoice);
    positions.direction(direction, text, clock.measure(), when, forVoice);
    TempoWord.of(text, clock.measure(), at).ifPresent(tempoWords::add);
    styles.words(text, when);
    if (direction.getSound() != null) {
      sound(direction.getSound(), at, !single);
    }
  }

  private void sound(Sound sound, BigFraction place, boolean changesPizzicato) {
    BigFraction at = sound.getOffset() == null ? place : moved(sound.getOffset());
    TempoMark.of(sound)
        .ifPresent(tempo -> tempi.add(new TempoMark(clock.measure(), at, tempo, true)));
    print.sound(sound, clock.measure(), at);
    if (changesPizzicato && sound.getPizzicato() != null) {
      pizzicato.change(sound.getPizzicato() == YesNo.YES, clock.start().add(at));
    }
  }

  /** The position, moved by an offset if there is one. */
  private BigFraction moved(@Nullable Offset offset) {
    return offset == null || offset.getValue() == null
        ? clock.here()
        : clock.offset(offset.getValue());
  }

  private void note(Note note) {
    hasLyrics |= !note.getLyric().isEmpty();
    // A note without duration is played like a grace note.
    boolean grace =
        note.getGrace() != null || (note.getDuration() != null && note.getDuration().signum() == 0);
    boolean chord = note.getChord() != null;
    BigFraction length = grace ? BigFraction.ZERO : length(note);
    BigFraction onset = clock.onset(chord);
    if (note.getVoice() != null) {
      voice = note.getVoice().strip();
    } else if (!chord) {
      voice = "1";
    }
    print.dynamics(note, clock.measure(), onset);
    NoteAddress address = new NoteAddress(part, clock.measure(), noteIndex);
    // The first printed note of a chord begins it.
    chordBegun &= chord;
    NoteTime time = new NoteTime(address, onset, length, grace, chordBegun, voice);
    boolean printed = note.getPrintObject() != YesNo.NO;
    boolean played = note.getCue() == null && note.getRest() == null;
    chordBegun |= printed;
    NoteNotations marks = new NoteNotations(note);
    shown = false;
    if (played && !printed) {
      // Programs hide notes that only play back an ornament or a harmonic. Nobody reads them.
      unprinted += note.getPitch() == null ? 0 : 1;
    } else if (played) {
      if (note.getPitch() != null) {
        Optional<Pitch> pitch = FilePitch.of(note.getPitch());
        pitch.ifPresent(read -> pitched(note, read, marks, time));
        if (pitch.isEmpty()) {
          clock.fault(Fault.PITCH);
        }
      } else if (note.getUnpitched() != null) {
        unpitched++;
      } else {
        clock.fault(Fault.PITCH);
      }
    } else if (printed) {
      // A cue rest is not shown, because the part has its own rests.
      if (note.getCue() == null) {
        print(note, marks, time, Optional.empty());
      } else if (note.getPitch() != null) {
        FilePitch.of(note.getPitch())
            .ifPresent(pitch -> print(note, marks, time, Optional.of(pitch)));
      }
    }
    if (!shown) {
      print.unseen(note, time);
    }
    clock.note(length, chord);
  }

  /** The length of a note or rest; as printed if the duration cannot be read. */
  private BigFraction length(Note note) {
    Optional<BigFraction> shown = PrintedLength.of(note);
    if (note.getRest() == null) {
      shown.ifPresent(length -> clock.suggests(note.getDuration(), length));
    }
    Optional<BigFraction> length = clock.length(note.getDuration());
    if (length.isEmpty()) {
      clock.fault(shown.isPresent() ? Fault.PRINTED_LENGTH : Fault.NO_LENGTH);
    }
    return length.or(() -> shown).orElse(BigFraction.ZERO);
  }

  private void print(Note note, NoteNotations marks, NoteTime time, Optional<Pitch> pitch) {
    print.note(note, time, marks.lines().tieStart(), pitch);
    shown = true;
  }

  private void pitched(Note note, Pitch pitch, NoteNotations printed, NoteTime time) {
    microtones += FilePitch.isMicrotone(note.getPitch()) ? 1 : 0;
    // Over a bar line, an accidental applies only to the tied note itself (common practice).
    if (note.getAccidental() != null || !printed.lines().tieStop()) {
      trills.shows(pitch, time.onset());
    }
    printed.ornament().ifPresent(trill -> trills.trill(notes.size(), trill, fifths));
    notes.add(
        new WrittenNote(
            time,
            clock.start().add(time.onset()),
            pitch,
            transposition,
            Optional.empty(),
            HarmonicSign.of(note, printed.harmonic()),
            printed.marks(),
            printed.lines(),
            printed.pizzicato(),
            printed.detached()));
    print(note, printed, time, Optional.of(pitch));
  }
}
