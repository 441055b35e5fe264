package fingering.playability.rules;

import fingering.music.Moment;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;

/** Divided passages of which the part does not say where they end. */
public final class DivisiRule implements CheckRule {
  /** After so many measures of single notes nobody knows who plays (common practice). */
  private static final int MEASURES = 4;

  @Override
  public void check(PartMusic music, Findings findings) {
    int single = -1;
    boolean told = false;
    for (int m = 0; m < music.moments().size(); m++) {
      Moment moment = music.moment(m);
      boolean several = moment.starting().size() + moment.held().size() > 1;
      if (!music.players().divided().get(m) || several) {
        single = -1;
        told = several ? false : told;
        continue;
      }
      if (single < 0) {
        single = m;
      }
      Moment first = music.moment(single);
      int measures = moment.place().measureIndex() - first.place().measureIndex();
      if (!told && measures >= MEASURES) {
        told = true;
        findings.add(
            FindingKind.DIVISI_NOT_ENDED,
            Together.NEVER,
            Severity.WORTH_KNOWING,
            measures,
            first,
            () ->
                new Words(
                    "The section is told to divide, but from %s on there is one line"
                        .formatted(NoteText.of(first)),
                    "Write 'unis.' where all play again, or rests for the others."));
      }
    }
  }
}
