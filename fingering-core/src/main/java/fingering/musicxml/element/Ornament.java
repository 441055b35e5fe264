package fingering.musicxml.element;

import com.google.common.collect.ImmutableSet;
import fingering.music.KeySignature;
import fingering.tables.FingeringException;
import fingering.tables.Pitch;
import jakarta.xml.bind.JAXBElement;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.AccidentalMark;
import org.audiveris.proxymusic.EmptyTrillSound;
import org.audiveris.proxymusic.HorizontalTurn;
import org.audiveris.proxymusic.TrillStep;
import org.audiveris.proxymusic.WavyLine;

/**
 * A trill, or another ornament with an upper note (MusicXML 4.0, element ornaments).
 *
 * @param turn whether it has a lower note too
 * @param accidental semitones by which its accidental alters the upper note
 * @param semitones semitones from the note to the upper note, 0 to 2, if the file states them
 */
public record Ornament(boolean turn, OptionalInt accidental, OptionalInt semitones) {

  /** Ornaments with only an upper note. A plain mordent has only a lower one. */
  private static final ImmutableSet<String> TRILLS =
      ImmutableSet.of("trill-mark", "shake", "wavy-line", "inverted-mordent");

  private static final ImmutableSet<String> TURNS =
      ImmutableSet.of(
          "turn",
          "inverted-turn",
          "delayed-turn",
          "delayed-inverted-turn",
          "vertical-turn",
          "inverted-vertical-turn",
          "haydn");

  private static final int LARGEST_STEP = 3;

  /** Returns the first ornament with an upper note, with the accidentals after it. */
  static Optional<Ornament> of(List<JAXBElement<?>> ornaments) {
    Optional<Ornament> found = Optional.empty();
    for (JAXBElement<?> element : ornaments) {
      String name = element.getName().getLocalPart();
      boolean turn = TURNS.contains(name);
      if (found.isEmpty() && (turn || TRILLS.contains(name))) {
        found = Optional.of(new Ornament(turn, OptionalInt.empty(), step(element.getValue())));
      } else if (found.isPresent() && element.getValue() instanceof AccidentalMark mark) {
        found = found.map(ornament -> ornament.with(mark));
      }
    }
    return found;
  }

  private static OptionalInt step(Object ornament) {
    Optional<TrillStep> step = Optional.empty();
    if (ornament instanceof EmptyTrillSound trill) {
      step = Optional.ofNullable(trill.getTrillStep());
    } else if (ornament instanceof HorizontalTurn turn) {
      step = Optional.ofNullable(turn.getTrillStep());
    } else if (ornament instanceof WavyLine line) {
      step = Optional.ofNullable(line.getTrillStep());
    }
    return step.map(
            said ->
                switch (said) {
                  case UNISON -> OptionalInt.of(0);
                  case HALF -> OptionalInt.of(1);
                  case WHOLE -> OptionalInt.of(2);
                })
        .orElse(OptionalInt.empty());
  }

  /** Returns the same ornament with an accidental. */
  Ornament with(AccidentalMark mark) {
    // Below a turn, an accidental alters the lower note.
    boolean lower = turn && mark.getPlacement() == AboveBelow.BELOW;
    return accidental.isPresent() || lower || mark.getValue() == null
        ? this
        : new Ornament(turn, alteration(mark), semitones);
  }

  private static OptionalInt alteration(AccidentalMark mark) {
    return switch (mark.getValue()) {
      case TRIPLE_SHARP -> OptionalInt.of(3);
      case DOUBLE_SHARP, SHARP_SHARP -> OptionalInt.of(2);
      case SHARP, NATURAL_SHARP -> OptionalInt.of(1);
      case NATURAL -> OptionalInt.of(0);
      case FLAT, NATURAL_FLAT -> OptionalInt.of(-1);
      case FLAT_FLAT -> OptionalInt.of(-2);
      case TRIPLE_FLAT -> OptionalInt.of(-3);
      default -> OptionalInt.empty();
    };
  }

  /**
   * Returns the upper note as written; empty for a unison trill, and beyond the range of pitches.
   *
   * @param note the note with the ornament
   * @param fifths sharps of the key signature, negative for flats
   * @param shown the alteration, in semitones, of an earlier note in the measure with the letter
   *     and octave of the upper note
   */
  public Optional<Pitch> upper(Pitch note, int fifths, OptionalInt shown) {
    if (accidental.isEmpty() && semitones.isPresent()) {
      return semitones.getAsInt() == 0 ? Optional.empty() : above(note, semitones.getAsInt());
    }
    int letter = note.letterNumber() + 1;
    try {
      Pitch natural = Pitch.natural(letter);
      int alter =
          accidental.isPresent()
              ? accidental.getAsInt()
              : shown.orElse(KeySignature.alter(natural.letter(), fifths));
      Pitch upper = new Pitch(natural.letter(), alter, natural.octave());
      int step = upper.midi() - note.midi();
      return step > 0 && step <= LARGEST_STEP ? Optional.of(upper) : above(note, 2);
    } catch (FingeringException e) {
      return above(note, 2);
    }
  }

  /**
   * Returns the pitch that is one letter and this many semitones higher; empty beyond the range of
   * pitches.
   */
  public static Optional<Pitch> above(Pitch note, int semitones) {
    try {
      return Optional.of(Pitch.spelled(note.letterNumber() + 1, note.midi() + semitones));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }
}
