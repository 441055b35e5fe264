package fingering.music.print;

/** The side of the staff, or of a note, on which something is printed. */
public enum Side {
  ABOVE,
  BELOW,
  /** The score does not say: where it usually is. */
  AUTO
}
