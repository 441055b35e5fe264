package fingering.practice;

import fingering.music.Moment;
import fingering.music.print.PrintedText;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Describes how much time the hands have for a change, such as to pizzicato or for a mute (common
 * practice, no source).
 */
final class ChangeoverTime {
  /** Seconds to change from the bow hold to the hold for pizzicato, or back. */
  private static final double NEW_HOLD = 1.0;

  /** Seconds to put a mute on. */
  private static final double MUTE_ON = 3.0;

  /** Seconds to take a mute off. */
  private static final double MUTE_OFF = 2.0;

  private static final double MICROS = 1e6;

  private final List<Moment> moments;

  ChangeoverTime(List<Moment> moments) {
    this.moments = moments;
  }

  private static double rest(Moment moment) {
    return moment.restMicros() / MICROS;
  }

  private static String restBefore(double seconds) {
    return seconds > 0
        ? String.format(Locale.ROOT, "%.1f s of rest before it", seconds)
        : "no rest before it";
  }

  /** Returns the index of the first moment at a time or later. */
  private int momentAt(BigFraction start) {
    for (int m = 0; m < moments.size(); m++) {
      if (moments.get(m).starting().get(0).start().compareTo(start) >= 0) {
        return m;
      }
    }
    return moments.size();
  }

  /** Describes the rest before a time, in quarter notes from the start of the part. */
  String restBefore(BigFraction start) {
    int m = momentAt(start);
    return m == 0 || m == moments.size()
        ? "prepare it before you start"
        : restBefore(rest(moments.get(m)));
  }

  /** Describes the time for putting a mute on or taking it off. */
  String mute(PrintedText sign) {
    String text = sign.text().toLowerCase(Locale.ROOT);
    boolean off =
        text.contains("senza")
            || text.contains("off")
            || text.contains("via")
            || text.contains("ohne")
            || text.contains("take");
    int m = momentAt(sign.start());
    if (m == 0 || m == moments.size()) {
      return sign.text() + ": " + restBefore(sign.start());
    }
    boolean enough = rest(moments.get(m)) >= (off ? MUTE_OFF : MUTE_ON);
    return sign.text()
        + ": "
        + restBefore(sign.start())
        + (enough ? ", enough time" : ", not enough: practise the move on its own");
  }

  /** Describes the time for the change to pizzicato or back to the bow at moment {@code m}. */
  String pizzicatoChange(int m) {
    Moment moment = moments.get(m);
    String word = moment.pizzicato() ? "pizz." : "arco";
    if (m == 0) {
      return word + ": prepare it before you start";
    }
    double rest = rest(moment);
    String time = restBefore(rest);
    if (!moment.pizzicato()) {
      return "arco: "
          + time
          + (rest >= NEW_HOLD ? ", time to find the bow hold" : ", have the bow ready");
    }
    int end = m;
    while (end < moments.size() && moments.get(end).pizzicato()) {
      end++;
    }
    boolean timeBefore = rest >= NEW_HOLD;
    boolean timeAfter = end == moments.size() || rest(moments.get(end)) >= NEW_HOLD;
    return "pizz.: "
        + time
        + (timeBefore && timeAfter
            ? ", time to change your hold"
            : timeBefore
                ? ", time to change your hold but not to change back: keep the bow in your hand"
                : timeAfter
                    ? ", keep the bow in your hand at first"
                    : ", keep the bow in your hand");
  }
}
