package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.EasyGrips;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLine;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import fingering.tables.Instrument;
import fingering.tables.Position;

/** Finds notes that no fingering reaches in the positions of the level. */
public final class PositionRule implements CheckRule {
  /** The number of pitches: of two notes in one position, the higher one is harder. */
  private static final double PITCHES = 128;

  private final CheckLevel level;

  private final EasyGrips easyGrips;
  private final OctaveMove move;

  /** Creates the rule for a level. */
  public PositionRule(CheckLevel level, EasyGrips easyGrips) {
    this.level = level;
    this.easyGrips = easyGrips;
    move = new OctaveMove(level);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    Position highest = level.highest(music.instrument());
    if (highest.equals(Position.THUMB)) {
      return;
    }
    for (PlayerLine line : music.lines()) {
      for (int m = 0; m < line.moments().size(); m++) {
        Position reached = easyGrips.lowestPosition(line.grips().get(m));
        if (reached.compareTo(highest) > 0) {
          Moment moment = line.moment(m);
          findings.add(
              FindingKind.POSITION_BEYOND_LEVEL,
              Merge.IN_A_SECTION,
              Severity.RISKY,
              reached.rank() + highestNote(moment) / PITCHES,
              moment,
              () -> message(music, moment, reached, highest));
        }
      }
      findings.endRuns();
    }
  }

  private static double highestNote(Moment moment) {
    return moment.sounding().stream().mapToInt(Note::midi).max().orElse(0);
  }

  private Message message(PartMusic music, Moment moment, Position at, Position highest) {
    Instrument instrument = music.instrument();
    String notes = NoteText.of(moment.sounding());
    return new Message(
        "%s needs %s position on the %s, but this level goes only up to %s"
            .formatted(notes, at.display(), instrument.nameInSentence(), highest.display()),
        suggestion(music, moment));
  }

  private String suggestion(PartMusic music, Moment moment) {
    ImmutableList<Note> notes = moment.sounding();
    if (notes.size() > 1) {
      return !notes.stream()
              .allMatch(note -> move.inPosition(music, moment, ImmutableList.of(note)))
          ? "Write it lower, or add an easier ossia."
          : music.section() ? "Write 'div.' above it." : "Keep one of the notes.";
    }
    return move.words(music, moment, notes.get(0), false)
        .map(octaves -> "Write it " + octaves + ", or add an easier ossia.")
        .orElse("Add an easier ossia.");
  }
}
