package fingering.demand;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.Collectors;

/**
 * Do without something that a player does not want, or not yet.
 *
 * @param what what to do without
 * @param span where
 */
public record Avoid(What what, MeasureSpan span) implements GripDemand {

  /** What a plan can do without. */
  public enum What {
    /** Strings that sound open; harmonics remain. */
    OPEN_STRINGS("open strings"),
    /** The first finger. */
    FIRST_FINGER("first finger"),
    /** The second finger. */
    SECOND_FINGER("second finger"),
    /** The third finger. */
    THIRD_FINGER("third finger"),
    /** The fourth finger. */
    FOURTH_FINGER("fourth finger"),
    /** The thumb on the string. */
    THUMB("thumb"),
    /** A finger out of the hand at rest; on the cello the extended hand. */
    EXTENSIONS("extensions"),
    /** Notes touched for a harmonic. */
    HARMONICS("harmonics");

    private final String words;

    What(String words) {
      this.words = words;
    }

    /** As in a sentence: {@code fourth finger}. */
    public String words() {
      return words;
    }

    /**
     * Reads the words, or the same joined by hyphens.
     *
     * @throws FingeringException if the text is none of these
     */
    public static What parse(String text) {
      String asked = text.strip().replace('-', ' ');
      return Arrays.stream(values())
          .filter(what -> what.words.equalsIgnoreCase(asked))
          .findFirst()
          .orElseThrow(
              () ->
                  new FingeringException(
                      "a plan cannot avoid '"
                          + text
                          + "'; it can avoid "
                          + Arrays.stream(values())
                              .map(what -> what.words.replace(' ', '-'))
                              .collect(Collectors.joining(", "))));
    }
  }

  @Override
  public BitSet concerns(Passage passage) {
    return span.in(passage);
  }

  @Override
  public boolean keeps(Moment moment, Grip grip) {
    return grip.placements().stream().noneMatch(placement -> has(placement, what));
  }

  /** Whether a note is taken with such a thing. */
  static boolean has(Placement placement, What what) {
    return switch (what) {
      case OPEN_STRINGS -> placement.open();
      case FIRST_FINGER -> placement.finger() == Finger.FIRST;
      case SECOND_FINGER -> placement.finger() == Finger.SECOND;
      case THIRD_FINGER -> placement.finger() == Finger.THIRD;
      case FOURTH_FINGER -> placement.finger() == Finger.FOURTH;
      case THUMB -> placement.finger() == Finger.THUMB;
      case EXTENSIONS -> !placement.open() && (placement.stretch() > 0 || extended(placement));
      case HARMONICS -> placement.touch().isPresent();
    };
  }

  private static boolean extended(Placement placement) {
    Frame.Shape shape = placement.frame().shape();
    return shape == Frame.Shape.EXTENDED_BACK || shape == Frame.Shape.EXTENDED_FORWARD;
  }

  /** The lowest note of an instrument has no other way than the open string. */
  @Override
  public boolean yields() {
    return what == What.OPEN_STRINGS;
  }

  @Override
  public String words() {
    return "do without " + what.words() + (yields() ? " where it can" : "") + span.words();
  }
}
