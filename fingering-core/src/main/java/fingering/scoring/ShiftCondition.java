package fingering.scoring;

/** When a transition rule may charge anything. */
public enum ShiftCondition {
  /** Whatever the hand does. */
  ANY,
  /** Only where the hand shifts. */
  SHIFT,
  /** Only where it does not. */
  STAY
}
