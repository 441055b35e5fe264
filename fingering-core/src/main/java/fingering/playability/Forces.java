package fingering.playability;

import java.util.Locale;

/** Who plays from a part. */
public enum Forces {
  /** One player, who has to play all notes. */
  ONE_PLAYER,
  /** A section, which can divide. */
  SECTION;

  /** Returns the name in data: {@code one-player}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
