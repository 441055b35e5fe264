package fingering.playability;

import fingering.music.Moment;
import fingering.music.Sign;
import java.util.List;

/** Where signs stand among the moments. */
final class Signs {
  private Signs() {}

  /** The first moment that begins with a sign or later; the number of moments where none does. */
  static int momentAt(List<Moment> moments, Sign sign) {
    int low = 0;
    int high = moments.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments.get(middle).struck().get(0).start().compareTo(sign.start()) < 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
