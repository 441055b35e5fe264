package fingering.playability.rules;

import fingering.music.Moment;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.EasyGrips;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLine;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;
import fingering.tables.Instrument;
import fingering.tables.Position;

/** Positions above those of the level, where no fingering avoids them. */
public final class PositionRule implements CheckRule {
  private final CheckLevel level;

  private final EasyGrips easy;

  public PositionRule(CheckLevel level, EasyGrips easy) {
    this.level = level;
    this.easy = easy;
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    Position highest = level.highest(music.instrument());
    if (highest.equals(Position.THUMB)) {
      return;
    }
    for (PlayerLine line : music.lines()) {
      for (int m = 0; m < line.moments().size(); m++) {
        Position reached = easy.needed(line.ways().get(m));
        if (reached.compareTo(highest) > 0) {
          Moment moment = line.moment(m);
          findings.add(
              FindingKind.POSITION_BEYOND_LEVEL,
              Together.IN_A_SECTION,
              Severity.RISKY,
              reached.rank(),
              moment,
              () -> words(music.instrument(), moment, reached, highest));
        }
      }
      findings.endRuns();
    }
  }

  private static Words words(Instrument instrument, Moment moment, Position at, Position highest) {
    String notes = NoteText.of(moment.sounding());
    return new Words(
        "%s needs %s position on the %s, and the level goes to %s"
            .formatted(notes, at.display(), instrument.spoken(), highest.display()),
        "Write it an octave lower, or mark an easier part for some of the players.");
  }
}
