package fingering.playability.part;

import fingering.music.Moment;
import fingering.music.PrintedText;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where texts stand among the moments. */
public final class TextPlaces {
  private TextPlaces() {}

  /** The first moment that begins with a text or later; the number of moments where none does. */
  public static int momentAt(List<Moment> moments, PrintedText text) {
    return momentAt(moments, text.start());
  }

  /**
   * The same for a time in quarter notes from the start of the part. Grace notes stand before the
   * note of their time.
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
