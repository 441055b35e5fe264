package fingering.page.view;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;
import java.util.Optional;

/**
 * The file that a student takes home, as it is shown.
 *
 * @param music the music
 * @param signs what the signs in the music mean
 * @param sound the table that the player plays, as JSON
 * @param script the player
 * @param ladder the tempo ladder; empty if none can be planned
 * @param spots the spots to begin with
 * @param circles what to circle
 */
public record GiftView(
    Music music,
    String signs,
    Content sound,
    Content script,
    Optional<Ladder> ladder,
    ImmutableList<SpotView> spots,
    ImmutableList<CircleGroup> circles) {}
