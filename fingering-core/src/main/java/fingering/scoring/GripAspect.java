package fingering.scoring;

import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;

/**
 * What a rule on two successive grips looks at in each of them. The rule charges the same for all
 * pairs of grips that are equal in this, as long as they meet its {@link ShiftCondition}, so the
 * search evaluates it only once for all of them. Most grips of a note differ only in the place of
 * the hand, or only in the finger.
 */
public enum GripAspect {
  /** Everything. */
  WHOLE,
  /** Which strings sound, and which of them are open. */
  STRINGS,
  /**
   * The string, finger and place of each note, which of them are stopped, whether the chord is
   * divided, and the shape of the hand, but not where it is on the neck.
   */
  FINGERS,
  /** The frame of the hand, and whether all strings are open. */
  HAND;

  /** A key that two grips of one hand share only if they are equal in this aspect. */
  ImmutableIntArray key(Grip grip, int index) {
    return switch (this) {
      case WHOLE -> ImmutableIntArray.of(index);
      case STRINGS -> strings(grip);
      case FINGERS -> fingers(grip);
      case HAND -> ImmutableIntArray.of(grip.frame().index(), grip.open() ? 1 : 0);
    };
  }

  private static ImmutableIntArray strings(Grip grip) {
    int[] key = new int[grip.placements().size()];
    for (int i = 0; i < key.length; i++) {
      Placement placement = grip.placements().get(i);
      key[i] = placement.string() << 1 | (placement.open() ? 1 : 0);
    }
    return ImmutableIntArray.copyOf(key);
  }

  private static ImmutableIntArray fingers(Grip grip) {
    int notes = grip.placements().size();
    int[] key = new int[notes + 1];
    for (int i = 0; i < notes; i++) {
      Placement placement = grip.placements().get(i);
      key[i] = placement.semitones();
      key[i] = key[i] << 8 | placement.string();
      key[i] = key[i] << 3 | placement.finger().ordinal();
      key[i] = key[i] << 1 | (placement.stopped() ? 1 : 0);
    }
    key[notes] = grip.frame().shape().ordinal() << 1 | (grip.divided() ? 1 : 0);
    return ImmutableIntArray.copyOf(key);
  }
}
