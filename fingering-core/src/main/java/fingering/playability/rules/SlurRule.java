package fingering.playability.rules;

import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLine;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import java.util.Locale;

/** Finds slurs within which the bow has to skip a string. */
public final class SlurRule implements CheckRule {
  private static final double MICROS = 1e6;

  private final double needed;

  /** Creates the rule for a level. */
  public SlurRule(CheckLevel level) {
    needed = level.seconds(Threshold.SLUR_OVER_A_STRING);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (PlayerLine line : music.lines()) {
      for (int m = 1; m < line.moments().size(); m++) {
        Moment moment = line.moment(m);
        Moment before = line.moment(m - 1);
        if (!moment.slurred() || moment.pizzicato() || moment.restMicros() > 0) {
          continue;
        }
        double since = (moment.startMicros() - before.startMicros()) / MICROS;
        if (since < needed
            && skipsString(line.grip(m - 1), line.grip(m))
            && !line.inOnePosition(m, (left, reached) -> !skipsString(left, reached))) {
          findings.add(
              FindingKind.SLUR_OVER_A_STRING,
              Merge.IN_A_PASSAGE,
              since < needed / 2 ? Severity.RISKY : Severity.WORTH_KNOWING,
              -since,
              moment,
              () -> message(before, moment, since));
        }
      }
      findings.endRuns();
    }
  }

  private static boolean skipsString(Grip before, Grip now) {
    int nearest = Integer.MAX_VALUE;
    for (Placement left : before.placements()) {
      for (Placement reached : now.placements()) {
        nearest = Math.min(nearest, Math.abs(left.string() - reached.string()));
      }
    }
    return nearest > 1;
  }

  private static Message message(Moment before, Moment now, double since) {
    return new Message(
        String.format(
            Locale.ROOT,
            "From %s to %s the bow has to skip a string within a slur, in only %.2f s",
            NoteText.of(before),
            NoteText.of(now),
            since),
        "End the slur before the skip.");
  }
}
