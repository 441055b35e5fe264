package fingering.practice;

import fingering.music.Moment;
import fingering.music.PrintedText;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** How much time there is for what the hands have to change (common practice, no source). */
final class ChangeoverTime {
  /** To lay the bow into the hand and set the thumb for pizzicato, or to take it up again. */
  private static final double NEW_HOLD = 1.0;

  /** To put a mute on; taking it off is quicker. */
  private static final double MUTE_ON = 3.0;

  private static final double MUTE_OFF = 2.0;
  private static final double MICROS = 1e6;

  private final List<Moment> moments;

  ChangeoverTime(List<Moment> moments) {
    this.moments = moments;
  }

  private static double rest(Moment moment) {
    return moment.restMicros() / MICROS;
  }

  private static String told(double seconds) {
    return String.format(Locale.ROOT, "%.1f s", seconds);
  }

  private int from(BigFraction start) {
    for (int m = 0; m < moments.size(); m++) {
      if (moments.get(m).starting().get(0).start().compareTo(start) >= 0) {
        return m;
      }
    }
    return moments.size();
  }

  /** The rest before what stands at a time. */
  String seconds(BigFraction start) {
    int m = from(start);
    if (m == 0 || m == moments.size()) {
      return "ready before the start";
    }
    double rest = rest(moments.get(m));
    return rest > 0 ? told(rest) + " of rest before it" : "no rest before it";
  }

  /** A mute. */
  String mute(PrintedText sign) {
    String text = sign.text().toLowerCase(Locale.ROOT);
    boolean off =
        text.contains("senza")
            || text.contains("off")
            || text.contains("via")
            || text.contains("ohne")
            || text.contains("take");
    int m = from(sign.start());
    if (m == 0 || m == moments.size()) {
      return sign.text() + ": " + seconds(sign.start());
    }
    boolean enough = rest(moments.get(m)) >= (off ? MUTE_OFF : MUTE_ON);
    return sign.text()
        + ": "
        + seconds(sign.start())
        + (enough ? ", enough" : ", little: practise the move by itself");
  }

  /** The change to or from plucking at a moment. */
  String plucked(int m) {
    Moment moment = moments.get(m);
    String word = moment.pizzicato() ? "pizz." : "arco";
    if (m == 0) {
      return word + ": ready before the start";
    }
    double rest = rest(moment);
    String time = rest > 0 ? told(rest) + " of rest before it" : "no rest before it";
    if (!moment.pizzicato()) {
      return "arco: "
          + time
          + (rest >= NEW_HOLD ? ", time to find the bow hold" : ", the bow has to be ready");
    }
    int end = m;
    while (end < moments.size() && moments.get(end).pizzicato()) {
      end++;
    }
    boolean into = rest >= NEW_HOLD;
    boolean out = end == moments.size() || rest(moments.get(end)) >= NEW_HOLD;
    return "pizz.: "
        + time
        + (into && out
            ? ", time to change the hold"
            : into
                ? ", time to change the hold, but none to change back: keep the bow in hand"
                : out ? ", keep the bow in hand at first" : ", keep the bow in hand");
  }
}
