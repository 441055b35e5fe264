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
 * @param beats upper number
 * @param beatType lower number
 */
public record Meter(int beats, int beatType) {

  /** The meter of a part before its first time signature. */
  public static final Meter COMMON = new Meter(4, 4);

  private static final int MOST = 1024;

  /**
   * Reads a time signature. Sums such as 3+2 over 8, or 3/4 + 1/8, become one fraction. Empty if it
   * is not a time signature.
   */
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
    if (terms.isEmpty() || !terms.stream().allMatch(Meter::valid)) {
      return Optional.empty();
    }
    int type = terms.stream().mapToInt(Meter::beatType).max().orElseThrow();
    int beats = terms.stream().mapToInt(term -> term.beats * type / term.beatType).sum();
    return Optional.of(new Meter(beats, type));
  }

  private static int sum(String number) {
    int sum = 0;
    for (String term : number.split("\\+", -1)) {
      sum += Integer.parseInt(term.strip());
    }
    return sum;
  }

  private boolean valid() {
    return beats > 0 && beats <= MOST && beatType > 0 && beatType <= MOST;
  }

  /** Returns the length of a full measure in quarter notes. */
  public BigFraction length() {
    return beat().multiply(beats);
  }

  /** Returns the length of a beat in quarter notes. */
  public BigFraction beat() {
    return beat(beatType);
  }

  /** Returns the length of a beat in quarter notes for the lower number of a time signature. */
  public static BigFraction beat(int beatType) {
    return BigFraction.of(4, beatType);
  }
}
