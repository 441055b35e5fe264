package fingering.player;

/** An extension beyond the hand frame that a student learns (common practice, no source). */
public enum Extension {
  /** The first finger reaches back; on the cello, the backward extension. */
  FIRST_BACK("first back"),
  /**
   * The fourth finger reaches forward; on the cello, the forward extension, and any finger that
   * reaches forward above the neck positions or in thumb position.
   */
  FOURTH_FORWARD("fourth forward");

  private final String word;

  Extension(String word) {
    this.word = word;
  }

  /** The name in a player file. */
  public String word() {
    return word;
  }
}
