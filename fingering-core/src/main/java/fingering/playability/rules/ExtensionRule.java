package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.MapMaker;
import fingering.fingerboard.Frame.Shape;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLine;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.Map;

/** Notes for which a finger has to reach out of the hand's frame, at levels that do not yet. */
public final class ExtensionRule implements CheckRule {
  private final CheckLevel level;
  private final boolean learned;

  /** By list of grips as one object. */
  private final Map<ImmutableList<Grip>, Boolean> needed = new MapMaker().weakKeys().makeMap();

  public ExtensionRule(CheckLevel level) {
    this.level = level;
    learned = level.yes(Threshold.EXTENSIONS);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    if (learned) {
      return;
    }
    Position highest = level.highest(music.instrument());
    boolean cello = music.instrument().kind() == HandKind.CELLO;
    for (PlayerLine line : music.lines()) {
      for (int m = 0; m < line.moments().size(); m++) {
        ImmutableList<Grip> ways = line.ways().get(m);
        if (needed.computeIfAbsent(ways, all -> needed(all, highest, cello))) {
          String notes = NoteText.of(line.moment(m).sounding());
          findings.add(
              FindingKind.EXTENSION_BEYOND_LEVEL,
              Together.IN_A_SECTION,
              Severity.WORTH_KNOWING,
              0,
              line.moment(m),
              () ->
                  new Words(
                      notes + " asks for an extension, which the level has not learned",
                      "Give the note to another part, or write one that lies in the hand as it falls."));
        }
      }
      findings.endRuns();
    }
  }

  /** Whether the note lies in the level's positions, but in each only for a hand that opens. */
  private static boolean needed(ImmutableList<Grip> ways, Position highest, boolean cello) {
    boolean within = false;
    for (Grip grip : ways) {
      Position position = grip.frame().position();
      // On the cello half position comes after the extensions.
      boolean known =
          position.compareTo(highest) <= 0 && !(cello && position.equals(Position.HALF));
      within |= known;
      if (known && !reachesOut(grip)) {
        return false;
      }
    }
    return within;
  }

  private static boolean reachesOut(Grip grip) {
    for (Placement placement : grip.placements()) {
      Shape shape = placement.frame().shape();
      boolean opens = shape == Shape.EXTENDED_BACK || shape == Shape.EXTENDED_FORWARD;
      if (!placement.open() && (placement.stretch() > 0 || opens)) {
        return true;
      }
    }
    return false;
  }
}
