package fingering.scoring;

import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Frame;
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
  /**
   * The frame of the hand, and whether all strings are open. A rule that looks only at the hand
   * sees no more of the {@link Transition} than its slur, long rest, beat and pace, and whether it
   * is only respelled.
   */
  HAND;

  /**
   * A key that two grips of one hand share only if they are equal in this aspect.
   *
   * @param index index of the grip among those of its moment
   */
  Object key(Grip grip, int index) {
    return switch (this) {
      case WHOLE -> index;
      case STRINGS -> notes(grip, GripAspect::string);
      case FINGERS ->
          new Fingers(grip.frame().shape(), grip.divided(), notes(grip, GripAspect::finger));
      case HAND -> 2 * grip.frame().index() + (grip.open() ? 1 : 0);
    };
  }

  private record Fingers(Frame.Shape shape, boolean divided, ImmutableIntArray notes) {}

  /** A number for each placement. */
  private static ImmutableIntArray notes(Grip grip, ToIntFunction<Placement> number) {
    if (grip.placements().size() == 1) {
      return ImmutableIntArray.of(number.applyAsInt(grip.top()));
    }
    return ImmutableIntArray.copyOf(grip.placements().stream().mapToInt(number));
  }

  private static int string(Placement placement) {
    return placement.string() << 1 | (placement.open() ? 1 : 0);
  }

  private static int finger(Placement placement) {
    int finger = placement.finger().symbol().charAt(0) << 1 | (placement.stopped() ? 1 : 0);
    return placement.semitones() << 16 | placement.string() << 8 | finger;
  }
}
