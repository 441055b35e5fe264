package fingering.exercise;

import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.util.Optional;

/**
 * A scale to practise and how to play it. Start with {@link #of} and change the details.
 *
 * @param scale the scale or arpeggio
 * @param octaves the number of octaves up and down, 1 to {@value #MAX_OCTAVES}
 * @param pattern the order of the notes
 * @param even whether all notes of a seven-note scale are equally long; otherwise its tonics are
 *     twice as long
 * @param slur eighths in a slur, 2 to {@value #MAX_SLUR}; 0 for separate bows
 * @param tempo the tempo; empty for the usual one
 */
public record ScaleRequest(
    Scale scale, int octaves, ScalePattern pattern, boolean even, int slur, Optional<Tempo> tempo) {

  /** The most octaves. */
  public static final int MAX_OCTAVES = 5;

  /** The most eighths in a slur. */
  public static final int MAX_SLUR = 24;

  /**
   * Checks the request.
   *
   * @throws FingeringException if a number is out of range, or the pattern is in thirds and the
   *     scale does not have seven notes
   */
  public ScaleRequest {
    if (octaves < 1 || octaves > MAX_OCTAVES) {
      throw new FingeringException(
          "%d octaves are out of range; ask for 1 to %d".formatted(octaves, MAX_OCTAVES));
    }
    if (slur != 0 && (slur < 2 || slur > MAX_SLUR)) {
      throw new FingeringException("a slur has 2 to %d eighths, not %d".formatted(MAX_SLUR, slur));
    }
    if (pattern != ScalePattern.STEPS && !scale.kind().sevenNotes()) {
      throw new FingeringException(
          "only seven-note scales can be played in thirds, and %s is not one; leave the pattern out"
              .formatted(scale.nameInSentence()));
    }
  }

  /** A scale by step in separate bows, with long tonics, at the usual tempo. */
  public static ScaleRequest of(Scale scale, int octaves) {
    return new ScaleRequest(scale, octaves, ScalePattern.STEPS, false, 0, Optional.empty());
  }

  /** A copy with another number of octaves. */
  public ScaleRequest withOctaves(int other) {
    return new ScaleRequest(scale, other, pattern, even, slur, tempo);
  }

  /** A copy with another pattern. */
  public ScaleRequest withPattern(ScalePattern other) {
    return new ScaleRequest(scale, octaves, other, even, slur, tempo);
  }

  /** A copy with equally long notes except for the last, or with long tonics. */
  public ScaleRequest withEven(boolean other) {
    return new ScaleRequest(scale, octaves, pattern, other, slur, tempo);
  }

  /** A copy with another number of eighths in a slur, 0 for separate bows. */
  public ScaleRequest withSlur(int eighths) {
    return new ScaleRequest(scale, octaves, pattern, even, eighths, tempo);
  }

  /** A copy with a tempo. */
  public ScaleRequest withTempo(Tempo other) {
    return new ScaleRequest(scale, octaves, pattern, even, slur, Optional.of(other));
  }

  /** The title: {@code D major in broken thirds, 2 octaves}. */
  public String title() {
    return scale.display()
        + (pattern.label().isEmpty() ? "" : " " + pattern.label())
        + ", "
        + octaves(octaves);
  }

  /** {@code 1 octave}, {@code 2 octaves}. */
  static String octaves(int octaves) {
    return octaves == 1 ? "1 octave" : octaves + " octaves";
  }
}
