package fingering.musicxml.element;

import jakarta.xml.bind.JAXBElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Time;

/**
 * A time signature.
 *
 * @param beats upper figure
 * @param beatType lower figure
 */
public record Meter(int beats, int beatType) {

  /** The meter of music that names none. */
  static final Meter COMMON = new Meter(4, 4);

  private static final int MOST = 1024;

  /** Reads a time signature; sums such as 3+2 over 8, or 3/4 + 1/8, become one figure. */
  public static Optional<Meter> of(Time time) {
    List<Meter> terms = new ArrayList<>();
    try {
      int beats = 0;
      for (JAXBElement<String> figure : time.getTimeSignature()) {
        if (figure.getName().getLocalPart().equals("beats")) {
          beats = sum(figure.getValue());
        } else {
          terms.add(new Meter(beats, Integer.parseInt(figure.getValue().strip())));
        }
      }
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
    if (terms.isEmpty() || !terms.stream().allMatch(Meter::sane)) {
      return Optional.empty();
    }
    int type = terms.stream().mapToInt(Meter::beatType).max().orElseThrow();
    int beats = terms.stream().mapToInt(term -> term.beats * type / term.beatType).sum();
    return Optional.of(new Meter(beats, type));
  }

  private static int sum(String figure) {
    int sum = 0;
    for (String term : figure.split("\\+", -1)) {
      sum += Integer.parseInt(term.strip());
    }
    return sum;
  }

  private boolean sane() {
    return beats > 0 && beats <= MOST && beatType > 0 && beatType <= MOST;
  }

  /** The length of a full measure in quarter notes. */
  public BigFraction length() {
    return beat().multiply(beats);
  }

  /** The length of one beat in quarter notes. */
  public BigFraction beat() {
    return beat(beatType);
  }

  /** The length of one beat in quarter notes, by the lower figure of a time signature. */
  public static BigFraction beat(int beatType) {
    return BigFraction.of(4, beatType);
  }
}
