package fingering.playability;

import java.util.Locale;

/** How many play from a part. */
public enum Forces {
  /** One player, who has to play all of it. */
  ONE_PLAYER,
  /** A section, which can divide. */
  SECTION;

  /** The name in data: {@code one-player}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
