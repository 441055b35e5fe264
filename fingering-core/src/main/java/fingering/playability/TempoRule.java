package fingering.playability;

import fingering.fingerboard.Grip;
import fingering.playability.Findings.Together;
import fingering.playability.Findings.Words;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.Level;
import fingering.tempo.Limit;
import java.util.Locale;

/** Leaps, crossings, chords, trills and runs that have too little time. */
final class TempoRule implements CheckRule {
  private final Level tempo;
  private final double haste;
  private final double riskyHaste;

  TempoRule(CheckLevel level) {
    tempo = level.tempo();
    haste = level.share(Threshold.HASTE);
    riskyHaste = level.share(Threshold.RISKY_HASTE);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (Line line : music.lines()) {
      for (Limit limit : ComfortableTempo.under(line.plan(), tempo, haste)) {
        if (!divided(line, limit.moment())) {
          findings.add(
              kind(limit),
              Together.IN_A_PASSAGE,
              limit.factor() < riskyHaste ? Severity.RISKY : Severity.WORTH_KNOWING,
              -limit.factor(),
              line.moment(limit.moment()),
              () -> words(music, limit));
        }
      }
      findings.endRuns();
    }
  }

  /** What no hand takes is told as that. */
  private static boolean divided(Line line, int m) {
    Grip grip = line.grip(m);
    return grip.divided() || (m > 0 && line.grip(m - 1).divided());
  }

  private static FindingKind kind(Limit limit) {
    return switch (limit.cause()) {
      case SHIFT, SLIDE, HOP, STRETCH -> FindingKind.LEAP_TOO_QUICK;
      case CROSSING, SKIP -> FindingKind.CROSSING_TOO_QUICK;
      case CHORD -> FindingKind.CHORD_TOO_QUICK;
      case TRILL -> FindingKind.TRILL_TOO_SHORT;
      case PIZZICATO -> FindingKind.PLUCKED_TOO_QUICK;
      case FINGERS, WEAK_FINGERS, TOGETHER, BOW, GRACE_NOTES, RUN ->
          FindingKind.ABOVE_COMFORTABLE_TEMPO;
    };
  }

  private static Words words(PartMusic music, Limit limit) {
    String says =
        "%s needs %s and has %s"
            .formatted(limit.says(), seconds(limit.neededMicros()), seconds(limit.freeMicros()));
    String slower = limit.tempo().map(at -> "take it at " + at + " or slower").orElse("");
    String way =
        switch (kind(limit)) {
          case LEAP_TOO_QUICK -> "Give the hand a rest or a longer note before it";
          case CROSSING_TOO_QUICK -> "Write it on neighbouring strings or in one octave";
          case CHORD_TOO_QUICK -> music.section() ? "Divide it" : "Leave a note of it out";
          case TRILL_TOO_SHORT -> "Write a mordent or a grace note instead";
          case PLUCKED_TOO_QUICK -> "Let two groups of the section take turns, or write arco";
          default -> "Write fewer notes";
        };
    return new Words(capital(says), way + (slower.isEmpty() ? "." : ", or " + slower + "."));
  }

  /** {@code 0.21 s}. */
  static String seconds(long micros) {
    return String.format(Locale.ROOT, "%.2f s", micros / 1e6);
  }

  private static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }
}
