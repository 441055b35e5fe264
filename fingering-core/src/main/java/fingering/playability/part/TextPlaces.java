package fingering.playability.part;

import fingering.music.Moment;
import fingering.music.print.PrintedText;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds moments by time. */
public final class TextPlaces {
  private TextPlaces() {}

  /** Returns the index of the first moment at a text or later; the number of moments if none. */
  public static int momentAt(List<Moment> moments, PrintedText text) {
    return momentAt(moments, text.start());
  }

  /**
   * Returns the index of the first moment at a time or later; the number of moments if none. Grace
   * notes come before the note of their time.
   *
   * @param start the time in quarter notes from the start of the part
   */
  public static int momentAt(List<Moment> moments, BigFraction start) {
    int low = 0;
    int high = moments.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments.get(middle).starting().get(0).start().compareTo(start) < 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
