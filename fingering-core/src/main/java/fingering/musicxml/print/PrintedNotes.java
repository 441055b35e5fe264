package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.music.print.Accidental;
import fingering.music.print.NoteShape;
import fingering.music.print.NoteShape.Beam;
import fingering.music.print.NoteShape.Head;
import fingering.music.print.NoteShape.Stem;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Tremolo;
import fingering.music.print.PrintedNote.Tremolo.Role;
import fingering.music.print.PrintedNote.Value;
import fingering.music.print.Side;
import fingering.musicxml.element.HarmonicSign;
import fingering.musicxml.element.NoteTime;
import fingering.musicxml.element.Quarters;
import fingering.tables.FingeringException;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import jakarta.xml.bind.JAXBElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.AccidentalValue;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Ornaments;
import org.audiveris.proxymusic.Rest;
import org.audiveris.proxymusic.SymbolSize;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.TiedType;
import org.audiveris.proxymusic.TimeModification;
import org.audiveris.proxymusic.TremoloType;
import org.audiveris.proxymusic.YesNo;
import org.jspecify.annotations.Nullable;

/** Reads the printed form of notes and rests. */
final class PrintedNotes {
  private static final ImmutableMap<String, Integer> PARTS =
      ImmutableMap.<String, Integer>builder()
          .put("breve", 0)
          .put("whole", 1)
          .put("half", 2)
          .put("quarter", 4)
          .put("eighth", 8)
          .put("16th", 16)
          .put("32nd", 32)
          .put("64th", 64)
          .put("128th", 128)
          .put("256th", 256)
          .buildOrThrow();

  private static final int MOST_IN_TUPLET = 64;

  /** The limit of the format, for strokes of a tremolo and for beams. */
  private static final int MOST_STROKES = 8;

  private PrintedNotes() {}

  /**
   * Returns the printed form of a note.
   *
   * @param tied whether a tie begins at it
   * @param pitch its pitch; empty for a rest
   */
  static PrintedNote of(Note note, NoteTime time, boolean tied, Optional<Pitch> pitch) {
    Tremolo tremolo = tremolo(note);
    PrintedSigns signs = new PrintedSigns(note);
    return new PrintedNote(
        time.address(),
        time.onset(),
        time.length(),
        value(note, time.length()),
        pitch,
        restAt(note.getRest()),
        accidental(note),
        time.grace(),
        note.getCue() != null,
        time.chord(),
        time.voice(),
        shape(note),
        tied,
        tied ? tieSide(note) : Side.AUTO,
        tremolo.paired() ? 0 : tuplet(note.getTimeModification()),
        tremolo,
        signs.signs(),
        signs.ornamentAccidentals());
  }

  private static Value value(Note note, BigFraction length) {
    boolean whole =
        note.getRest() != null
            && (note.getRest().getMeasure() == YesNo.YES || note.getType() == null);
    if (whole) {
      return new Value(1, 0, true);
    }
    String type = note.getType() == null ? null : note.getType().getValue();
    return value(type, note.getDot().size()).orElseGet(() -> nearest(length));
  }

  /** The note value with a name of the format; empty if there is none. */
  static Optional<Value> value(@Nullable String name, int dots) {
    return Optional.ofNullable(name)
        .flatMap(stated -> Optional.ofNullable(PARTS.get(stated.strip())))
        .map(part -> new Value(part, dots, false));
  }

  /** The note value nearest to a length if the file states none. */
  private static Value nearest(BigFraction length) {
    double quarters = Quarters.value(length);
    int part = 1;
    while (part < 256 && 4.0 / part > quarters) {
      part *= 2;
    }
    return new Value(part, 4.0 / part * 1.5 <= quarters ? 1 : 0, false);
  }

  private static Optional<Pitch> restAt(@Nullable Rest rest) {
    if (rest == null || rest.getDisplayStep() == null || rest.getDisplayOctave() == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Pitch(Letter.valueOf(rest.getDisplayStep().name()), 0, rest.getDisplayOctave()));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  private static Optional<Accidental> accidental(Note note) {
    org.audiveris.proxymusic.Accidental printed = note.getAccidental();
    if (printed == null) {
      return Optional.empty();
    }
    return kind(printed.getValue())
        .map(
            kind ->
                new Accidental(
                    kind,
                    printed.getCautionary() == YesNo.YES,
                    printed.getParentheses() == YesNo.YES || printed.getBracket() == YesNo.YES));
  }

  /** The kind of accidental; empty for one of microtones. */
  static Optional<Accidental.Kind> kind(@Nullable AccidentalValue value) {
    if (value == null) {
      return Optional.empty();
    }
    return switch (value) {
      case SHARP -> Optional.of(Accidental.Kind.SHARP);
      case FLAT -> Optional.of(Accidental.Kind.FLAT);
      case NATURAL -> Optional.of(Accidental.Kind.NATURAL);
      case DOUBLE_SHARP, SHARP_SHARP -> Optional.of(Accidental.Kind.DOUBLE_SHARP);
      case FLAT_FLAT -> Optional.of(Accidental.Kind.DOUBLE_FLAT);
      case NATURAL_SHARP -> Optional.of(Accidental.Kind.NATURAL_SHARP);
      case NATURAL_FLAT -> Optional.of(Accidental.Kind.NATURAL_FLAT);
      default -> Optional.empty();
    };
  }

  private static NoteShape shape(Note note) {
    boolean small =
        note.getGrace() == null
            && note.getCue() == null
            && note.getType() != null
            && note.getType().getSize() == SymbolSize.CUE;
    boolean slashed = note.getGrace() != null && note.getGrace().getSlash() == YesNo.YES;
    return new NoteShape(head(note), small, stem(note), beams(note), slashed);
  }

  private static Head head(Note note) {
    if (HarmonicSign.of(note, Optional.empty()).diamond()) {
      return Head.DIAMOND;
    }
    return note.getNotehead() != null && note.getNotehead().getParentheses() == YesNo.YES
        ? Head.PARENTHESES
        : Head.NORMAL;
  }

  private static Stem stem(Note note) {
    if (note.getStem() == null || note.getStem().getValue() == null) {
      return Stem.AUTO;
    }
    return switch (note.getStem().getValue()) {
      case UP -> Stem.UP;
      case DOWN -> Stem.DOWN;
      case NONE -> Stem.NONE;
      default -> Stem.AUTO;
    };
  }

  private static ImmutableList<Beam> beams(Note note) {
    List<Beam> beams = new ArrayList<>();
    for (org.audiveris.proxymusic.Beam beam : note.getBeam()) {
      int number = beam.getNumber();
      if (beam.getValue() == null || number < 1 || number > MOST_STROKES) {
        continue;
      }
      while (beams.size() < number) {
        beams.add(Beam.NONE);
      }
      beams.set(
          number - 1,
          switch (beam.getValue()) {
            case BEGIN -> Beam.BEGIN;
            case CONTINUE -> Beam.CONTINUE;
            case END -> Beam.END;
            case FORWARD_HOOK -> Beam.FORWARD_HOOK;
            case BACKWARD_HOOK -> Beam.BACKWARD_HOOK;
          });
    }
    return ImmutableList.copyOf(beams);
  }

  private static Side tieSide(Note note) {
    for (Notations notations : note.getNotations()) {
      for (Object notation : notations.getTiedOrSlurOrTuplet()) {
        if (notation instanceof Tied tied && tied.getType() != TiedType.STOP) {
          return Sides.of(tied.getOrientation(), tied.getPlacement());
        }
      }
    }
    return Side.AUTO;
  }

  private static int tuplet(@Nullable TimeModification change) {
    if (change == null || change.getActualNotes() == null) {
      return 0;
    }
    return Math.max(0, Math.min(MOST_IN_TUPLET, change.getActualNotes().intValue()));
  }

  private static Tremolo tremolo(Note note) {
    for (Notations notations : note.getNotations()) {
      for (Object notation : notations.getTiedOrSlurOrTuplet()) {
        if (notation instanceof Ornaments ornaments) {
          for (JAXBElement<?> element : ornaments.getTrillMarkOrTurnOrDelayedTurn()) {
            if (element.getValue() instanceof org.audiveris.proxymusic.Tremolo printed) {
              return read(printed);
            }
          }
        }
      }
    }
    return Tremolo.NONE;
  }

  private static Tremolo read(org.audiveris.proxymusic.Tremolo printed) {
    Role role =
        printed.getType() == TremoloType.START
            ? Role.FIRST
            : printed.getType() == TremoloType.STOP ? Role.SECOND : Role.ALONE;
    return new Tremolo(Math.max(0, Math.min(MOST_STROKES, printed.getValue())), role);
  }
}
