package fingering.scoring;

import fingering.music.Moment;
import fingering.music.PlayingStyle;

/**
 * How much a line sings, so that a player chooses strings and positions for their sound: 0, not at
 * all; 1, somewhat; 2, fully. Slow slurred notes sing, and so does everything but quick notes under
 * dolce, espressivo or cantabile. Notes with a bow each sing only if they are slow, and staccato
 * notes never do (common practice, no source).
 */
final class Singing {
  /** The highest level. */
  static final int FULLY = 2;

  private static final int SOMEWHAT = 1;

  /**
   * From this mean length of the notes a line is slow with a bow for each note, in microseconds.
   */
  private static final long SLOW_BOWS_MICROS = 450_000;

  private Singing() {}

  /** The level at a moment. */
  static int of(Moment moment) {
    long micros = moment.surroundings().paceMicros();
    if (moment.style() == PlayingStyle.DETACHED || moment.pizzicato() || micros == 0) {
      return 0;
    }
    Pace pace = Pace.of(micros);
    if (moment.style() == PlayingStyle.SINGING) {
      return pace == Pace.QUICK ? SOMEWHAT : FULLY;
    }
    if (moment.slurred() || moment.surroundings().slursOn()) {
      return slurred(pace);
    }
    // A part without any slur says nothing about the bowing.
    int less = moment.surroundings().slursPrinted() ? 1 : 0;
    int level = micros >= SLOW_BOWS_MICROS ? FULLY : pace == Pace.SLOW ? SOMEWHAT : 0;
    return Math.max(0, level - less);
  }

  private static int slurred(Pace pace) {
    return switch (pace) {
      case SLOW -> FULLY;
      case MODERATE -> SOMEWHAT;
      case QUICK -> 0;
    };
  }
}
