package fingering.page;

/** The direction of a shift. */
public enum ShiftDirection {
  UP,
  DOWN
}
