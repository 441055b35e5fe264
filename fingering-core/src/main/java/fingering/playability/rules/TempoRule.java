package fingering.playability.rules;

import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLine;
import fingering.playability.part.TextPlaces;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import fingering.tempo.LimitCause;
import fingering.tempo.TempoLimit;
import java.util.Locale;

/** Finds leaps, crossings, chords, trills and runs with too little time. */
public final class TempoRule implements CheckRule {
  /** The least share of the marked tempo that is proposed as a slower one. */
  private static final double SLOWEST_PROPOSED = 0.7;

  private final double haste;
  private final double riskyHaste;

  /** Creates the rule for a level. */
  public TempoRule(CheckLevel level) {
    haste = level.share(Threshold.HASTE);
    riskyHaste = level.share(Threshold.RISKY_HASTE);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (PlayerLine line : music.lines()) {
      for (TempoLimit limit : line.limits().below(haste)) {
        if (divided(line, limit.moment()) || beginsMovement(music, line, limit.moment())) {
          continue;
        }
        Severity severity = limit.factor() < riskyHaste ? Severity.RISKY : Severity.WORTH_KNOWING;
        boolean avoidable =
            kind(limit) == FindingKind.LEAP_TOO_QUICK && avoidable(line, limit.moment());
        if (!avoidable || severity == Severity.RISKY) {
          findings.add(
              kind(limit),
              Merge.IN_A_PASSAGE,
              avoidable ? Severity.WORTH_KNOWING : severity,
              -limit.factor(),
              line.moment(limit.moment()),
              () -> message(music, limit, avoidable));
        }
      }
      findings.endRuns();
    }
  }

  /** Returns whether a chord out of reach is involved, which another rule reports. */
  private static boolean divided(PlayerLine line, int m) {
    Grip grip = line.grip(m);
    return grip.divided() || (m > 0 && line.grip(m - 1).divided());
  }

  /** Returns whether a movement begins at a moment of a line: there is time for any change. */
  private static boolean beginsMovement(PartMusic music, PlayerLine line, int m) {
    int at = TextPlaces.momentAt(music.moments(), line.moment(m).starting().get(0).start());
    return m > 0 && music.movementStarts().get(at);
  }

  /**
   * Returns whether the two notes can also be played in one position, without a hop of a finger.
   */
  private static boolean avoidable(PlayerLine line, int m) {
    return m > 0 && line.inOnePosition(m, TempoRule::easyChange);
  }

  private static boolean easyChange(Grip left, Grip reached) {
    int nearest = Integer.MAX_VALUE;
    for (Placement a : left.placements()) {
      for (Placement b : reached.placements()) {
        nearest = Math.min(nearest, Math.abs(a.string() - b.string()));
        boolean same = a.string() == b.string() && a.semitones() == b.semitones();
        if ((a.finger() == b.finger() && !a.open() && !same) || b.stretch() > 0) {
          return false;
        }
      }
    }
    return nearest <= 1;
  }

  private static FindingKind kind(TempoLimit limit) {
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

  private static Message message(PartMusic music, TempoLimit limit, boolean avoidable) {
    String reason =
        "%s: needs %s, but has only %s"
            .formatted(limit.text(), seconds(limit.neededMicros()), seconds(limit.freeMicros()));
    String slower =
        limit.factor() < SLOWEST_PROPOSED
            ? ""
            : limit
                .tempo()
                .map(at -> "play it at " + at.toString().replace("=", " = ") + " or slower")
                .orElse("");
    String fix =
        switch (kind(limit)) {
          case LEAP_TOO_QUICK ->
              avoidable
                  ? "Mark a fingering in one position"
                  : "Write a rest or a longer note before it";
          case CROSSING_TOO_QUICK -> "Keep the notes on neighbouring strings or within an octave";
          case CHORD_TOO_QUICK -> music.section() ? "Divide it" : "Leave out one of its notes";
          case TRILL_TOO_SHORT -> "Write a mordent or a grace note instead";
          case PLUCKED_TOO_QUICK ->
              music.section() ? "Let two groups take turns, or write arco" : "Write arco";
          default ->
              limit.cause() == LimitCause.BOW ? "Write an unmeasured tremolo" : "Write fewer notes";
        };
    return new Message(capital(reason), fix + (slower.isEmpty() ? "." : ", or " + slower + "."));
  }

  /** Returns a time as text: {@code 0.21 s}. */
  private static String seconds(long micros) {
    return String.format(Locale.ROOT, "%.2f s", micros / 1e6);
  }

  private static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }
}
