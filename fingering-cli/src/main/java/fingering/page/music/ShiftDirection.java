package fingering.page.music;

/** The direction of a shift. */
public enum ShiftDirection {
  UP,
  DOWN
}
