package fingering.playability.rules;

import fingering.music.Moment;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;

/** Finds divided passages without a marked end. */
public final class DivisiRule implements CheckRule {
  /** Measures of single notes after which it is unclear who plays (common practice, no source). */
  private static final int MEASURES = 4;

  @Override
  public void check(PartMusic music, Findings findings) {
    int single = -1;
    boolean reported = false;
    for (int m = 0; m < music.moments().size(); m++) {
      Moment moment = music.moment(m);
      boolean several = moment.starting().size() + moment.held().size() > 1;
      if (!music.players().divided().get(m) || several) {
        single = -1;
        reported = several ? false : reported;
        continue;
      }
      if (single < 0) {
        single = m;
      }
      Moment first = music.moment(single);
      int measures = moment.place().measureIndex() - first.place().measureIndex();
      if (!reported && measures >= MEASURES) {
        reported = true;
        findings.add(
            FindingKind.DIVISI_NOT_ENDED,
            Merge.NEVER,
            Severity.WORTH_KNOWING,
            measures,
            first,
            () ->
                new Message(
                    "The section is divided, but from %s on there is only one line"
                        .formatted(NoteText.of(first)),
                    "Write 'unis.' where all play again, or rests for the other players."));
      }
    }
  }
}
