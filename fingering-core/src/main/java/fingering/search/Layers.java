package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.scoring.Passing;
import fingering.scoring.Scoring;
import java.util.function.ToLongFunction;

/**
 * The layered graph of a passage: a layer a moment, a node a grip, an edge the way from one grip to
 * the next. An edge is closed where a held note would have to change its string or finger.
 *
 * @param moments the moments, in order
 * @param grips the grips of each moment
 * @param scoring the cost of nodes and edges
 * @param penalty what a grip offends against the brief where nothing better can be had, 0 or more;
 *     the search makes the sum of it least before it looks at costs
 */
public record Layers(
    ImmutableList<Moment> moments,
    ImmutableList<ImmutableList<Grip>> grips,
    Scoring scoring,
    ToLongFunction<Grip> penalty) {

  public Layers {
    if (moments.size() != grips.size() || moments.isEmpty()) {
      throw new IllegalArgumentException(
          moments.size() + " moments and grips for " + grips.size() + "; there must be as many");
    }
  }

  /** Cost of the way from a grip of a moment's predecessor to a grip of it, or {@link #CLOSED}. */
  public long edge(Passing passing, Grip before, Grip now) {
    return open(passing, before, now) ? scoring.cost(passing, before, now) : CLOSED;
  }

  /** The cost of an edge that no hand can go. */
  public static final long CLOSED = -1;

  private static boolean open(Passing passing, Grip before, Grip now) {
    if (passing.now().held().isEmpty()) {
      return true;
    }
    ImmutableList<Note> left = passing.before().sounding();
    ImmutableList<Note> reached = passing.now().sounding();
    if (before.placements().size() != left.size() || now.placements().size() != reached.size()) {
      return true; // held notes that no hand can hold were let go
    }
    for (Note held : passing.now().held()) {
      int was = left.indexOf(held);
      int is = reached.indexOf(held);
      if (was >= 0 && !same(before.placements().get(was), now.placements().get(is))) {
        return false;
      }
    }
    return true;
  }

  private static boolean same(Placement a, Placement b) {
    return a.string() == b.string() && a.finger() == b.finger();
  }
}
