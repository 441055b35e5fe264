package fingering.playability;

import fingering.music.Moment;
import fingering.music.Sign;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where signs stand among the moments. */
final class Signs {
  private Signs() {}

  /** The first moment that begins with a sign or later; the number of moments where none does. */
  static int momentAt(List<Moment> moments, Sign sign) {
    return momentAt(moments, sign.start());
  }

  /**
   * The same for a time in quarter notes from the start of the part. Grace notes stand before the
   * note of their time.
   */
  static int momentAt(List<Moment> moments, BigFraction start) {
    int low = 0;
    int high = moments.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments.get(middle).struck().get(0).start().compareTo(start) < 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
