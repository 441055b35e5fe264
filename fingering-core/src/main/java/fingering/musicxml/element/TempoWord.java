package fingering.musicxml.element;

import fingering.music.BeatUnit;
import fingering.music.Tempo;
import fingering.musicxml.words.TempoWords;
import fingering.musicxml.words.TempoWords.Instruction;
import fingering.musicxml.xml.XmlText;
import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Words for a tempo and their position in the score.
 *
 * @param measure index of the measure, from 0
 * @param onset quarter notes from the start of the measure
 * @param words the words as printed
 * @param instruction their meaning
 */
public record TempoWord(int measure, BigFraction onset, String words, Instruction instruction) {
  /** From this many beats per minute, a measure of 3/8 is one beat: Allegretto, not Andante. */
  private static final int QUICK = 108;

  private static final int EIGHTH = 8;
  private static final double LONG_BEAT = 2 / 3.0;
  private static final double SHORT_BEAT = 3 / 2.0;

  /** Returns the words of a direction if they name a tempo. */
  public static Optional<TempoWord> of(String text, int measure, BigFraction onset) {
    return TempoWords.read(text)
        .map(instruction -> new TempoWord(measure, onset, XmlText.oneLine(text), instruction));
  }

  /**
   * Returns the tempo for a number of beats in a meter. The numbers of handbooks are for quarter
   * notes in simple time. Longer beats pass more slowly under the same word (common practice, no
   * source): the half notes of cut time and the dotted quarters of 6/8 at two thirds of the number.
   * In 3/8 a slow word counts eighths; under a quick one the whole measure is one beat, at half the
   * number, so the eighths are half again as fast.
   *
   * @param beats beats per minute, 30 to 208
   */
  public static Tempo tempo(int beats, Meter meter) {
    if (meter.beats() > 3 && meter.beats() % 3 == 0 && meter.beatType() >= 4) {
      return tempo(unit(meter.beatType() / 2, 1), beats * LONG_BEAT);
    }
    if (meter.beatType() <= 2) {
      return tempo(unit(meter.beatType(), 0), beats * LONG_BEAT);
    }
    if (meter.beatType() >= EIGHTH) {
      return tempo(unit(meter.beatType(), 0), beats >= QUICK ? beats * SHORT_BEAT : beats);
    }
    return tempo(BeatUnit.QUARTER, beats);
  }

  private static Tempo tempo(BeatUnit unit, double perMinute) {
    return new Tempo(unit, BigDecimal.valueOf(Math.round(perMinute)));
  }

  private static BeatUnit unit(int part, int dots) {
    return new BeatUnit(
        switch (part) {
          case 1 -> "whole";
          case 2 -> "half";
          case 4 -> "quarter";
          case 8 -> "eighth";
          default -> "16th";
        },
        dots);
  }
}
