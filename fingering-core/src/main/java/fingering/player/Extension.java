package fingering.player;

/** A stretch out of the hand's frame that a student learns (common practice, no source). */
public enum Extension {
  /** The first finger drawn back; on the cello the hand extended back. */
  FIRST_BACK("first back"),
  /**
   * The fourth finger stretched forward; on the cello the hand extended forward, and above the neck
   * and in thumb position whichever finger reaches further.
   */
  FOURTH_FORWARD("fourth forward");

  private final String word;

  Extension(String word) {
    this.word = word;
  }

  /** The word for it in a player file. */
  public String word() {
    return word;
  }
}
