package fingering.playability.rules;

import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.PartMusic;
import fingering.playability.part.ScoreWords;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;

/** Finds parts that are for two instruments. */
public final class SharedPartRule implements CheckRule {

  @Override
  public void check(PartMusic music, Findings findings) {
    if (music.scoreWords().read(music.info().name()).contains(ScoreWords.Kind.SHARED)) {
      findings.add(
          FindingKind.SHARED_PART,
          Merge.NEVER,
          Severity.WORTH_KNOWING,
          0,
          music.moment(0),
          () ->
              new Message(
                  "'%s' is one part for two instruments, and was checked only for the %s"
                      .formatted(music.info().name(), music.instrument().nameInSentence()),
                  "Write a part for each, or check this one again for the other instrument."));
    }
  }
}
