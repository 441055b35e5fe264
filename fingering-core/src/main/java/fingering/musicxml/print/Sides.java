package fingering.musicxml.print;

import fingering.music.print.Side;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.OverUnder;
import org.jspecify.annotations.Nullable;

/** The side on which the file places something. */
final class Sides {
  private Sides() {}

  static Side of(@Nullable AboveBelow placement) {
    return placement == null ? Side.AUTO : placement == AboveBelow.ABOVE ? Side.ABOVE : Side.BELOW;
  }

  /** The side of a curve. An orientation says more than a placement: over curves upwards. */
  static Side of(@Nullable OverUnder orientation, @Nullable AboveBelow placement) {
    return orientation == null
        ? of(placement)
        : orientation == OverUnder.OVER ? Side.ABOVE : Side.BELOW;
  }
}
