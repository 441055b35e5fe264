package fingering.exercise;

import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.util.Optional;

/**
 * What is to be practised. Start from {@link #of} and add what is asked for.
 *
 * @param scale the scale or arpeggio
 * @param octaves how many octaves up and down, 1 to 5
 * @param pattern how its notes follow one another
 * @param even whether a scale of seven notes has all notes alike; its tonics are held otherwise
 * @param slur eighths to a bow, 2 to 24; 0 for separate bows
 * @param tempo the tempo; empty for the usual one
 */
public record ScaleRequest(
    Scale scale, int octaves, ScalePattern pattern, boolean even, int slur, Optional<Tempo> tempo) {

  /** The most octaves. */
  public static final int MOST_OCTAVES = 5;

  /** The most eighths to a bow. */
  public static final int LONGEST_SLUR = 24;

  /**
   * Checks the request.
   *
   * @throws FingeringException if a number is out of range, or thirds are asked for in what is no
   *     scale of seven notes
   */
  public ScaleRequest {
    if (octaves < 1 || octaves > MOST_OCTAVES) {
      throw new FingeringException(
          "%d octaves are out of range; ask for 1 to %d".formatted(octaves, MOST_OCTAVES));
    }
    if (slur != 0 && (slur < 2 || slur > LONGEST_SLUR)) {
      throw new FingeringException(
          "a bow takes 2 to %d eighths, not %d".formatted(LONGEST_SLUR, slur));
    }
    if (pattern != ScalePattern.STEPS && !scale.kind().sevenNotes()) {
      throw new FingeringException(
          "only scales of seven notes go in thirds, and %s is none; leave the pattern out"
              .formatted(scale.spoken()));
    }
  }

  /** A scale in separate bows, its tonics held, at the usual tempo. */
  public static ScaleRequest of(Scale scale, int octaves) {
    return new ScaleRequest(scale, octaves, ScalePattern.STEPS, false, 0, Optional.empty());
  }

  /** The same in so many octaves. */
  public ScaleRequest withOctaves(int other) {
    return new ScaleRequest(scale, other, pattern, even, slur, tempo);
  }

  /** The same in that pattern. */
  public ScaleRequest withPattern(ScalePattern other) {
    return new ScaleRequest(scale, octaves, other, even, slur, tempo);
  }

  /** The same with all notes alike but the last, or with held tonics. */
  public ScaleRequest withEven(boolean alike) {
    return new ScaleRequest(scale, octaves, pattern, alike, slur, tempo);
  }

  /** The same with so many eighths to a bow, 0 for separate bows. */
  public ScaleRequest withSlur(int eighths) {
    return new ScaleRequest(scale, octaves, pattern, even, eighths, tempo);
  }

  /** The same at that tempo. */
  public ScaleRequest withTempo(Tempo other) {
    return new ScaleRequest(scale, octaves, pattern, even, slur, Optional.of(other));
  }

  /** What it is called: {@code D major in broken thirds, 2 octaves}. */
  public String title() {
    return scale.display()
        + (pattern.words().isEmpty() ? "" : " " + pattern.words())
        + ", "
        + counted(octaves);
  }

  /** {@code 1 octave}, {@code 2 octaves}. */
  static String counted(int octaves) {
    return octaves == 1 ? "1 octave" : octaves + " octaves";
  }
}
