package fingering.scoring;

import fingering.music.Moment;
import fingering.music.PlayingStyle;

/**
 * How much a line sings, so that a player chooses strings and positions for their sound: 0, not at
 * all; 1, somewhat; 2, fully. Slow slurred notes sing, and so does everything but quick notes under
 * dolce, espressivo or cantabile. Detached notes never do (common practice, no source).
 */
final class Singing {
  /** The highest level. */
  static final int FULLY = 2;

  private static final int SOMEWHAT = 1;

  private Singing() {}

  /** The level at a moment. */
  static int of(Moment moment) {
    Pace pace = Pace.of(moment.surroundings().paceMicros());
    if (moment.style() == PlayingStyle.DETACHED || moment.pizzicato()) {
      return 0;
    }
    if (moment.style() == PlayingStyle.SINGING) {
      return pace == Pace.QUICK ? SOMEWHAT : FULLY;
    }
    boolean slurred = moment.slurred() || moment.surroundings().slursOn();
    return switch (pace) {
      // A part without any slur says nothing about the bowing.
      case SLOW -> slurred || !moment.surroundings().slursPrinted() ? FULLY : SOMEWHAT;
      case MODERATE -> slurred ? SOMEWHAT : 0;
      case QUICK -> 0;
    };
  }
}
