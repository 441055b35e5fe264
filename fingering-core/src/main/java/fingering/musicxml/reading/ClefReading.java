package fingering.musicxml.reading;

import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.math.BigInteger;
import java.util.Optional;
import org.audiveris.proxymusic.Clef;

/** The instrument that a clef suggests. */
final class ClefReading {
  private ClefReading() {}

  static Optional<Instrument> of(Clef clef, Instruments instruments) {
    if (clef.getSign() == null) {
      return Optional.empty();
    }
    String sign = clef.getSign().value();
    String line =
        clef.getLine() == null
            ? switch (sign) {
              case "G" -> "2";
              case "F" -> "4";
              case "C" -> "3";
              default -> "";
            }
            : clef.getLine().toString();
    BigInteger octave = clef.getClefOctaveChange();
    if (octave == null || octave.signum() == 0) {
      return instruments.byClef(sign + line);
    }
    // Programs give the double bass a bass clef with an 8 below.
    return (sign + line).equals("F4") && octave.intValue() == -1
        ? instruments.byPartName("double bass")
        : Optional.empty();
  }
}
