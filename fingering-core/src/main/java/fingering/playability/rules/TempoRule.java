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
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;
import fingering.tempo.LimitCause;
import fingering.tempo.TempoLimit;
import java.util.Locale;

/** Leaps, crossings, chords, trills and runs that have too little time. */
public final class TempoRule implements CheckRule {
  /** A tempo slower than this share of the one marked is no way out. */
  private static final double SLOWER = 0.7;

  private final double haste;
  private final double riskyHaste;

  public TempoRule(CheckLevel level) {
    haste = level.share(Threshold.HASTE);
    riskyHaste = level.share(Threshold.RISKY_HASTE);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (PlayerLine line : music.lines()) {
      for (TempoLimit limit : line.limits().below(haste)) {
        if (divided(line, limit.moment()) || begins(music, line, limit.moment())) {
          continue;
        }
        Severity severity = limit.factor() < riskyHaste ? Severity.RISKY : Severity.WORTH_KNOWING;
        boolean avoided =
            kind(limit) == FindingKind.LEAP_TOO_QUICK && avoided(line, limit.moment());
        if (!avoided || severity == Severity.RISKY) {
          findings.add(
              kind(limit),
              Together.IN_A_PASSAGE,
              avoided ? Severity.WORTH_KNOWING : severity,
              -limit.factor(),
              line.moment(limit.moment()),
              () -> words(music, limit, avoided));
        }
      }
      findings.endRuns();
    }
  }

  /** What no hand takes is told as that. */
  private static boolean divided(PlayerLine line, int m) {
    Grip grip = line.grip(m);
    return grip.divided() || (m > 0 && line.grip(m - 1).divided());
  }

  /** Between two movements there is time for everything. */
  private static boolean begins(PartMusic music, PlayerLine line, int m) {
    int at = TextPlaces.momentAt(music.moments(), line.moment(m).starting().get(0).start());
    return m > 0 && music.movements().get(at);
  }

  /** Whether the two notes also lie in one position, without a finger that hops. */
  private static boolean avoided(PlayerLine line, int m) {
    return m > 0 && line.inOnePosition(m, TempoRule::follows);
  }

  private static boolean follows(Grip left, Grip reached) {
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

  private static Words words(PartMusic music, TempoLimit limit, boolean avoided) {
    String says =
        "%s: it needs %s and has %s"
            .formatted(limit.text(), seconds(limit.neededMicros()), seconds(limit.freeMicros()));
    String slower =
        limit.factor() < SLOWER
            ? ""
            : limit
                .tempo()
                .map(at -> "take it at " + at.toString().replace("=", " = ") + " or slower")
                .orElse("");
    String way =
        switch (kind(limit)) {
          case LEAP_TOO_QUICK ->
              avoided
                  ? "Mark a fingering in one position"
                  : "Give the hand a rest or a longer note before it";
          case CROSSING_TOO_QUICK -> "Write it on neighbouring strings or in one octave";
          case CHORD_TOO_QUICK -> music.section() ? "Divide it" : "Leave a note of it out";
          case TRILL_TOO_SHORT -> "Write a mordent or a grace note instead";
          case PLUCKED_TOO_QUICK -> "Let two groups of the section take turns, or write arco";
          default ->
              limit.cause() == LimitCause.BOW
                  ? "Write a tremolo without measure"
                  : "Write fewer notes";
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
