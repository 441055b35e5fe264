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
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.Map;

/** Finds notes that need an extension, for players who have not learned extensions. */
public final class ExtensionRule implements CheckRule {
  private final CheckLevel level;
  private final boolean learned;

  /** Whether an extension is needed, by list of grips; weak keys are compared by identity. */
  private final Map<ImmutableList<Grip>, Boolean> needed = new MapMaker().weakKeys().makeMap();

  /** Creates the rule for a level. */
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
        ImmutableList<Grip> grips = line.grips().get(m);
        if (needed.computeIfAbsent(grips, all -> needed(all, highest, cello))) {
          String notes = NoteText.of(line.moment(m).sounding());
          findings.add(
              FindingKind.EXTENSION_BEYOND_LEVEL,
              Merge.IN_A_SECTION,
              Severity.WORTH_KNOWING,
              0,
              line.moment(m),
              () ->
                  new Message(
                      notes + " needs an extension, which players at this level have not learned",
                      "Give the note to another part, or write one that needs no extension."));
        }
      }
      findings.endRuns();
    }
  }

  /**
   * Returns whether there are grips in the level's positions, but all of them with an extension.
   */
  private static boolean needed(ImmutableList<Grip> grips, Position highest, boolean cello) {
    boolean within = false;
    for (Grip grip : grips) {
      Position position = grip.frame().position();
      // On the cello, half position is learned after the extensions.
      boolean known =
          position.compareTo(highest) <= 0 && !(cello && position.equals(Position.HALF));
      within |= known;
      if (known && !hasExtension(grip)) {
        return false;
      }
    }
    return within;
  }

  private static boolean hasExtension(Grip grip) {
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
