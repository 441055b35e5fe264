package fingering.engraving.spacing;

import java.util.List;

/** Distances that stretch and shrink together, each down to its least length. */
final class Springs {
  private static final int ROUNDS = 40;

  private Springs() {}

  /** The length of a distance at some stretch: 1 for its natural length. */
  static double length(MeasureShape measure, int index, double stretch) {
    return Math.max(measure.least().get(index), measure.natural().get(index) * stretch);
  }

  private static double length(List<MeasureShape> measures, double stretch) {
    double sum = 0;
    for (MeasureShape measure : measures) {
      for (int i = 0; i <= measure.columns().size(); i++) {
        sum += length(measure, i, stretch);
      }
    }
    return sum;
  }

  /** The stretch at which all distances together have a length; 0 if they cannot be so short. */
  static double stretch(List<MeasureShape> measures, double length) {
    if (length(measures, 0) >= length) {
      return 0;
    }
    double low = 0;
    double high = 1;
    while (length(measures, high) < length && high < 1e6) {
      high *= 2;
    }
    for (int i = 0; i < ROUNDS; i++) {
      double middle = (low + high) / 2;
      if (length(measures, middle) < length) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
