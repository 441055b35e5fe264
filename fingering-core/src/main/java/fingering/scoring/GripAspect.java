package fingering.scoring;

import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import java.util.function.ToIntFunction;

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

  /**
   * A key that two grips of one hand share only if they are equal in this aspect.
   *
   * @param index index of the grip among those of its moment
   */
  Object key(Grip grip, int index) {
    return switch (this) {
      case WHOLE -> index;
      case STRINGS -> key(grip, 0, GripAspect::string);
      case FINGERS -> key(grip, fingersApart(grip), GripAspect::finger);
      case HAND -> 2 * grip.frame().index() + (grip.open() ? 1 : 0);
    };
  }

  private static int fingersApart(Grip grip) {
    return 2 * grip.frame().shape().ordinal() + (grip.divided() ? 1 : 0);
  }

  /** A key made of a number for the grip and one for each of its placements. */
  private static Object key(Grip grip, int own, ToIntFunction<Placement> number) {
    int notes = grip.placements().size();
    if (notes == 1) {
      return (long) own << Integer.SIZE | Integer.toUnsignedLong(number.applyAsInt(grip.top()));
    }
    ImmutableIntArray.Builder key = ImmutableIntArray.builder(notes + 1);
    key.add(own);
    for (int i = 0; i < notes; i++) {
      key.add(number.applyAsInt(grip.placements().get(i)));
    }
    return key.build();
  }

  private static int string(Placement placement) {
    return placement.string() << 1 | (placement.open() ? 1 : 0);
  }

  private static int finger(Placement placement) {
    int finger = placement.finger().ordinal() << 1 | (placement.stopped() ? 1 : 0);
    return placement.semitones() << 16 | placement.string() << 8 | finger;
  }
}
