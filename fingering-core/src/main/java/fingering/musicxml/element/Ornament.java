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
 * A trill, or another ornament that goes to the upper note (MusicXML 4.0, element ornaments).
 *
 * @param turn whether it goes to the lower note too
 * @param accidental semitones by which the accidental at it alters the upper note
 * @param semitones how far above the note the upper one is said to sound: 0, 1 or 2
 */
public record Ornament(boolean turn, OptionalInt accidental, OptionalInt semitones) {

  /** Everything with an upper note but the turns; a mordent proper has only a lower one. */
  private static final ImmutableSet<String> SHAKES =
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

  private static final int FURTHEST = 3;

  /** The ornament with an upper note among these, with the accidentals that stand by it. */
  public static Optional<Ornament> of(List<JAXBElement<?>> ornaments) {
    Optional<Ornament> found = Optional.empty();
    for (JAXBElement<?> element : ornaments) {
      String name = element.getName().getLocalPart();
      boolean turn = TURNS.contains(name);
      if (found.isEmpty() && (turn || SHAKES.contains(name))) {
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

  /** The same ornament with an accidental that stands by it. */
  public Ornament with(AccidentalMark mark) {
    // Below a turn it alters the lower note.
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
   * The upper note as written.
   *
   * @param note the note that bears the ornament
   * @param fifths sharps, or flats below 0, of the key signature
   * @param shown what the measure has shown for the letter and octave of the upper note
   * @return empty for a trill in unison, and at the end of all pitches
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
      return step > 0 && step <= FURTHEST ? Optional.of(upper) : above(note, 2);
    } catch (FingeringException e) {
      return above(note, 2);
    }
  }

  /** The pitch a letter and so many semitones above, if there is one. */
  public static Optional<Pitch> above(Pitch note, int semitones) {
    try {
      return Optional.of(Pitch.spelled(note.letterNumber() + 1, note.midi() + semitones));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }
}
