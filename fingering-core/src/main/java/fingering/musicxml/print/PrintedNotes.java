package fingering.musicxml.print;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.music.PrintedNote;
import fingering.music.PrintedNote.Beam;
import fingering.music.PrintedNote.Sign;
import fingering.music.PrintedNote.Tremolo;
import fingering.music.PrintedNote.Tremolo.Role;
import fingering.music.PrintedNote.Value;
import fingering.musicxml.element.NoteTime;
import fingering.musicxml.element.Quarters;
import fingering.tables.Pitch;
import jakarta.xml.bind.JAXBElement;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Articulations;
import org.audiveris.proxymusic.Fermata;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Ornaments;
import org.audiveris.proxymusic.Technical;
import org.audiveris.proxymusic.TimeModification;
import org.audiveris.proxymusic.TremoloType;
import org.audiveris.proxymusic.YesNo;

/** Reads the printed form of notes and rests. */
public final class PrintedNotes {
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

  private static final ImmutableMap<String, Sign> SIGNS =
      ImmutableMap.<String, Sign>builder()
          .put("staccato", Sign.STACCATO)
          .put("staccatissimo", Sign.STACCATO)
          .put("accent", Sign.ACCENT)
          .put("strong-accent", Sign.MARCATO)
          .put("tenuto", Sign.TENUTO)
          .put("trill-mark", Sign.TRILL)
          .put("harmonic", Sign.HARMONIC)
          .put("stopped", Sign.LEFT_PLUCKED)
          .put("up-bow", Sign.UP_BOW)
          .put("down-bow", Sign.DOWN_BOW)
          .buildOrThrow();

  private static final int MOST_IN_TUPLET = 64;

  /** The limit of the format. */
  private static final int MOST_STROKES = 8;

  private PrintedNotes() {}

  /**
   * Returns the printed form of a note.
   *
   * @param tied whether a tie begins at it
   * @param pitch its printed pitch; empty for a rest
   */
  public static PrintedNote of(Note note, NoteTime time, boolean tied, Optional<Pitch> pitch) {
    Tremolo tremolo = tremolo(note);
    return new PrintedNote(
        time.address(),
        time.onset(),
        time.length(),
        value(note, time.length()),
        pitch,
        accidental(note),
        time.grace(),
        note.getCue() != null,
        time.chord(),
        time.voice(),
        tied,
        beam(note),
        tremolo.paired() ? 0 : tuplet(note.getTimeModification()),
        tremolo,
        signs(note));
  }

  private static Value value(Note note, BigFraction length) {
    boolean whole =
        note.getRest() != null
            && (note.getRest().getMeasure() == YesNo.YES || note.getType() == null);
    if (whole) {
      return new Value(1, 0, true);
    }
    Integer part = note.getType() == null ? null : PARTS.get(note.getType().getValue());
    return part == null ? nearest(length) : new Value(part, note.getDot().size(), false);
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

  private static OptionalInt accidental(Note note) {
    if (note.getAccidental() == null || note.getAccidental().getValue() == null) {
      return OptionalInt.empty();
    }
    return switch (note.getAccidental().getValue()) {
      case SHARP -> OptionalInt.of(1);
      case FLAT -> OptionalInt.of(-1);
      case NATURAL -> OptionalInt.of(0);
      case DOUBLE_SHARP, SHARP_SHARP -> OptionalInt.of(2);
      case FLAT_FLAT -> OptionalInt.of(-2);
      default -> OptionalInt.empty();
    };
  }

  private static Beam beam(Note note) {
    for (org.audiveris.proxymusic.Beam beam : note.getBeam()) {
      if (beam.getNumber() == 1 && beam.getValue() != null) {
        return switch (beam.getValue()) {
          case BEGIN -> Beam.BEGIN;
          case CONTINUE -> Beam.CONTINUE;
          case END -> Beam.END;
          default -> Beam.NONE;
        };
      }
    }
    return Beam.NONE;
  }

  private static int tuplet(TimeModification change) {
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

  private static ImmutableSet<Sign> signs(Note note) {
    Set<Sign> signs = EnumSet.noneOf(Sign.class);
    for (Notations notations : note.getNotations()) {
      for (Object notation : notations.getTiedOrSlurOrTuplet()) {
        if (notation instanceof Articulations articulations) {
          articulations.getAccentOrStrongAccentOrStaccato().forEach(e -> add(signs, e));
        } else if (notation instanceof Ornaments ornaments) {
          ornaments.getTrillMarkOrTurnOrDelayedTurn().stream()
              .filter(JAXBElement.class::isInstance)
              .forEach(e -> add(signs, (JAXBElement<?>) e));
        } else if (notation instanceof Technical technical) {
          technical.getUpBowOrDownBowOrHarmonic().forEach(e -> add(signs, e));
        } else if (notation instanceof Fermata) {
          signs.add(Sign.FERMATA);
        }
      }
    }
    return ImmutableSet.copyOf(signs);
  }

  private static void add(Set<Sign> signs, JAXBElement<?> element) {
    String name = element.getName().getLocalPart();
    // A harmonic with a diamond notehead has no circle, but both have the same sign here.
    Optional.ofNullable(SIGNS.get(name)).ifPresent(signs::add);
  }
}
