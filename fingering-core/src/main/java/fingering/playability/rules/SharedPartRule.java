package fingering.playability.rules;

import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.PartMusic;
import fingering.playability.part.ScoreWords;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;

/** Parts that serve two instruments. */
public final class SharedPartRule implements CheckRule {

  @Override
  public void check(PartMusic music, Findings findings) {
    if (music.words().read(music.info().name()).contains(ScoreWords.Kind.SHARED)) {
      findings.add(
          FindingKind.SHARED_PART,
          Together.NEVER,
          Severity.WORTH_KNOWING,
          0,
          music.moment(0),
          () ->
              new Words(
                  "'%s' is one part for two instruments and was checked for the %s alone"
                      .formatted(music.info().name(), music.instrument().spoken()),
                  "Write a part for each, or check it again for the other with --instrument."));
    }
  }
}
