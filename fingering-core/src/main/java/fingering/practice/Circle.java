package fingering.practice;

import com.google.common.base.Ascii;
import fingering.music.MeasureBeat;
import fingering.music.Place;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A sign or word to circle in the part before playing.
 *
 * @param kind its kind
 * @param place its place
 * @param text what is there, and what to do about it
 */
public record Circle(Kind kind, Place place, String text) {
  /** No rhythm needs more than three decimals of a beat. */
  private static final int DECIMALS = 3;

  /**
   * Its name in a lesson: measure, beat and kind, {@code 12.1 dynamic}. Circles of one kind at one
   * place share it.
   */
  public String name() {
    BigDecimal beat =
        new BigDecimal(place.beat().doubleValue(), MathContext.DECIMAL64)
            .setScale(DECIMALS, RoundingMode.HALF_UP);
    return new MeasureBeat(place.measure(), beat) + " " + kind.word();
  }

  /** Kinds of things to circle, the most easily overlooked first. */
  public enum Kind {
    /** A sudden, large change of dynamic. */
    SUDDEN("Sudden changes"),
    /** A long crescendo or diminuendo. */
    LONG_HAIRPIN("Long hairpins"),
    /** A change for the hands: pizzicato, bow, mute or string. */
    CHANGE("Changes to prepare"),
    /** A shift of the chosen plan. */
    SHIFT("Shifts"),
    /** An accidental outside the key, one that still holds in its measure, or a new clef. */
    READING("Accidentals and clefs"),
    /** Any other dynamic. */
    DYNAMIC("Other dynamics"),
    /** Accented notes. */
    ACCENT("Accents"),
    /** Tempo marks and other words. */
    WORDS("Tempo and words"),
    /** Repeats, endings and jumps. */
    REPEAT("Repeats");

    private final String heading;

    Kind(String heading) {
      this.heading = heading;
    }

    /** Returns the heading of a list of this kind. */
    public String heading() {
      return heading;
    }

    /** Returns the word for this kind in a lesson: {@code sudden}, {@code long-hairpin}. */
    public String word() {
      return Ascii.toLowerCase(name()).replace('_', '-');
    }
  }
}
