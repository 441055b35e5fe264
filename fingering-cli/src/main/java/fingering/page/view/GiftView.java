package fingering.page.view;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;
import java.util.Optional;

/**
 * The file that a student takes home, as it is shown.
 *
 * @param music the music as far as it stands there at once
 * @param packed more of it, compressed and as Base64; empty if there are none
 * @param signs what the signs in the music mean
 * @param sound the table that the player plays, as JSON; empty if it is packed
 * @param script the player
 * @param ladder the tempo ladder; empty if none can be planned
 * @param spots the spots to begin with
 * @param circles what to circle
 */
public record GiftView(
    Music music,
    String packed,
    String signs,
    String sound,
    Content script,
    Optional<Ladder> ladder,
    ImmutableList<SpotView> spots,
    ImmutableList<CircleGroup> circles) {

  /** The same file with some of the music packed, and the sound. */
  public GiftView packing(Music plain, String newPacked) {
    return new GiftView(plain, newPacked, signs, "", script, ladder, spots, circles);
  }
}
