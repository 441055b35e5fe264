package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Moment;
import fingering.music.print.Clef;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.PartMusic;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import java.util.Locale;

/** Finds clefs that players at the level do not read, and clefs that change too often. */
public final class ClefRule implements CheckRule {
  private static final double MICROS = 1e6;

  private final CheckLevel level;
  private final double between;

  /** Creates the rule for a level. */
  public ClefRule(CheckLevel level) {
    this.level = level;
    between = level.seconds(Threshold.BETWEEN_CLEFS);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    ImmutableSet<String> known = level.clefs(music.instrument());
    ImmutableList<Moment> moments = music.moments();
    Clef clef = music.prints().clef(moments.get(0).starting().get(0));
    // The clef at the beginning does not count as a change.
    long changed = -(long) (between * MICROS);
    for (int m = 0; m < moments.size(); m++) {
      Moment moment = moments.get(m);
      Clef now = music.prints().clef(moment.starting().get(0));
      Clef plain = new Clef(now.sign(), now.line(), 0);
      if (!known.contains(plain.display())) {
        findings.add(
            FindingKind.CLEF_NOT_USUAL,
            Merge.IN_A_SECTION,
            Severity.RISKY,
            0,
            moment,
            () ->
                new Message(
                    "Players at this level do not read %s clef on the %s"
                        .formatted(plain.display(), music.instrument().nameInSentence()),
                    "Write it in " + String.join(" or ", known) + " clef."));
      }
      if (!now.equals(clef) && !music.movementStarts().get(m)) {
        double since = (moment.startMicros() - changed) / MICROS;
        if (since < between) {
          findings.add(
              FindingKind.CHANGES_OF_CLEF,
              Merge.IN_A_PASSAGE,
              Severity.WORTH_KNOWING,
              -since,
              moment,
              () ->
                  new Message(
                      String.format(
                          Locale.ROOT,
                          "The clef changes to %s only %.1f s after the last change",
                          plain.display(),
                          since),
                      "Stay in one clef and use ledger lines."));
        }
        changed = moment.startMicros();
      }
      clef = now;
    }
  }
}
