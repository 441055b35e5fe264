package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.playability.Difficulty.Component;
import fingering.tables.Position;

/** Grades a part. */
final class DifficultyScale {
  /** How hard a part is. */
  Difficulty of(PartMusic music) {
    Position highest = Position.HALF;
    for (Line line : music.lines()) {
      highest =
          line.plan()
              .highestPosition()
              .filter(position -> position.compareTo(Position.HALF) > 0)
              .orElse(highest);
    }
    double grade = Math.min(10, Math.max(1, highest.halves() / 2.0));
    return new Difficulty(
        ImmutableList.of(
            new Component(
                "highest-position",
                "highest position",
                "Each position is a grade, to the 10th.",
                highest.display() + " position",
                grade)));
  }
}
