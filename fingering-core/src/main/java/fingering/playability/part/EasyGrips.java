package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.MapMaker;
import fingering.fingerboard.Frame.Shape;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.playability.CheckLevel;
import fingering.tables.Instrument;
import fingering.tables.Position;
import java.util.Comparator;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * The grips among which the easiest fingering is sought: none higher than the music around asks
 * for. A check has to be quick, and nobody goes up without need where a part is to be easy. Safe
 * for use by many threads.
 */
public final class EasyGrips {
  /** The hand goes no higher without need, in half positions: 3rd. */
  private static final int EVERYWHERE = Position.THIRD.rank();

  /** Above what is needed there is so much choice, in half positions: one position. */
  private static final int CHOICE = 2;

  /** Music so near belongs to one gesture, in microseconds. */
  private static final long AROUND = 1_000_000;

  private static final int HIGHEST = Position.THUMB.rank();

  private final CheckLevel level;

  /**
   * By list of grips as one object, what is left of it up to each position; what was not asked for
   * is missing.
   */
  private final Map<ImmutableList<Grip>, Kept> kept = new MapMaker().weakKeys().makeMap();

  private static final class Kept {
    private final Position needed;
    private final AtomicReferenceArray<ImmutableList<Grip>> upTo =
        new AtomicReferenceArray<>(HIGHEST + 1);

    Kept(Position needed) {
      this.needed = needed;
    }
  }

  /** For players of a level. */
  public EasyGrips(CheckLevel level) {
    this.level = level;
  }

  /** The lowest position in which one of the grips can be played. */
  public Position needed(ImmutableList<Grip> grips) {
    return kept(grips).needed;
  }

  /** The grips of each moment that are worth a thought; where nothing is easier, all of them. */
  ImmutableList<ImmutableList<Grip>> of(
      Instrument instrument,
      ImmutableList<Moment> moments,
      ImmutableList<ImmutableList<Grip>> ways) {
    int anywhere = Math.min(EVERYWHERE, level.highest(instrument).rank());
    int[] around = new int[HIGHEST + 1];
    ImmutableList.Builder<ImmutableList<Grip>> easy =
        ImmutableList.builderWithExpectedSize(ways.size());
    int first = 0;
    int next = 0;
    for (int m = 0; m < moments.size(); m++) {
      long now = moments.get(m).startMicros();
      while (next < moments.size() && moments.get(next).startMicros() - now <= AROUND) {
        around[needed(ways.get(next)).rank()]++;
        next++;
      }
      while (now - moments.get(first).startMicros() > AROUND) {
        around[needed(ways.get(first)).rank()]--;
        first++;
      }
      int needed = highest(around);
      easy.add(upTo(ways.get(m), needed <= anywhere ? anywhere : needed + CHOICE));
    }
    return easy.build();
  }

  private static int highest(int[] around) {
    int highest = HIGHEST;
    while (highest > 0 && around[highest] == 0) {
      highest--;
    }
    return highest;
  }

  private ImmutableList<Grip> upTo(ImmutableList<Grip> grips, int position) {
    if (position >= HIGHEST) {
      return grips;
    }
    Kept known = kept(grips);
    if (known.upTo.get(position) == null) {
      ImmutableList<Grip> low =
          grips.stream()
              .filter(grip -> grip.frame().position().rank() <= position)
              .collect(ImmutableList.toImmutableList());
      // The first stays, where two threads come at once: costs go by the list as one object.
      known.upTo.compareAndSet(position, null, low.isEmpty() ? grips : plain(low));
    }
    return known.upTo.get(position);
  }

  /**
   * On violin and viola the grips that take each note by its own letter, and none in half position
   * where 1st has one too; on cello and bass of those that differ in the hand's shape alone the one
   * with the hand closed.
   */
  private static ImmutableList<Grip> plain(ImmutableList<Grip> grips) {
    boolean letters = grips.get(0).frame().shape() == Shape.LETTERS;
    boolean first = grips.stream().anyMatch(grip -> in(grip, Position.FIRST) && !respelled(grip));
    ImmutableList<Grip> plain =
        grips.stream()
            .filter(
                grip ->
                    letters
                        ? !respelled(grip) && !(first && in(grip, Position.HALF))
                        : !opens(grip) || grips.stream().noneMatch(other -> closed(grip, other)))
            .collect(ImmutableList.toImmutableList());
    return plain.isEmpty() ? grips : plain;
  }

  private static boolean opens(Grip grip) {
    return grip.frame().shape() != Shape.CLOSED && grip.frame().shape() != Shape.THUMB;
  }

  /** Whether the other has the same fingers in the same places, with the hand closed. */
  private static boolean closed(Grip grip, Grip other) {
    if (opens(other)) {
      return false;
    }
    for (int i = 0; i < grip.placements().size(); i++) {
      Placement one = grip.placements().get(i);
      Placement two = other.placements().get(i);
      if (one.string() != two.string()
          || one.finger() != two.finger()
          || one.semitones() != two.semitones()) {
        return false;
      }
    }
    return true;
  }

  private static boolean in(Grip grip, Position position) {
    return grip.frame().position().equals(position);
  }

  private static boolean respelled(Grip grip) {
    for (Placement placement : grip.placements()) {
      if (placement.respelled()) {
        return true;
      }
    }
    return false;
  }

  private Kept kept(ImmutableList<Grip> grips) {
    return kept.computeIfAbsent(grips, all -> new Kept(lowest(all)));
  }

  private static Position lowest(ImmutableList<Grip> grips) {
    return grips.stream()
        .map(grip -> grip.frame().position())
        .min(Comparator.naturalOrder())
        .orElse(Position.THUMB);
  }
}
