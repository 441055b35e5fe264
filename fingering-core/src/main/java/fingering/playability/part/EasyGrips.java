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
 * Limits the grips among which the easiest fingering is searched: none much higher than the
 * surrounding notes need. This keeps the check fast, and nobody plays an easy part in a higher
 * position than necessary. Thread-safe.
 */
public final class EasyGrips {
  /** The position up to which all grips are kept, in half positions: 3rd. */
  private static final int ALWAYS_ALLOWED = Position.THIRD.rank();

  /** The half positions allowed above the position that is needed: one position. */
  private static final int MARGIN = 2;

  /** Notes within this time before or after count as surrounding, in microseconds. */
  private static final long NEARBY = 1_000_000;

  private static final int HIGHEST = Position.THUMB.rank();

  private final CheckLevel level;

  /**
   * Results by list of grips; weak keys are compared by identity. The planner caches costs by the
   * identity of lists as well, so each result must stay the same object.
   */
  private final Map<ImmutableList<Grip>, Cached> cache = new MapMaker().weakKeys().makeMap();

  private static final class Cached {
    private final Position lowestPosition;

    /** The grips up to a position, by its half positions; null until computed. */
    private final AtomicReferenceArray<ImmutableList<Grip>> upTo =
        new AtomicReferenceArray<>(HIGHEST + 1);

    Cached(Position lowestPosition) {
      this.lowestPosition = lowestPosition;
    }
  }

  /** Creates the limits for players at a level. */
  public EasyGrips(CheckLevel level) {
    this.level = level;
  }

  /** Returns the lowest position of all grips. */
  public Position lowestPosition(ImmutableList<Grip> grips) {
    return cached(grips).lowestPosition;
  }

  /**
   * Returns the easy grips of each moment; all grips of a moment if none is easier.
   *
   * @param allGrips every grip of each moment
   */
  ImmutableList<ImmutableList<Grip>> of(
      Instrument instrument,
      ImmutableList<Moment> moments,
      ImmutableList<ImmutableList<Grip>> allGrips) {
    int alwaysAllowed = Math.min(ALWAYS_ALLOWED, level.highest(instrument).rank());
    int[] nearbyPositions = new int[HIGHEST + 1];
    ImmutableList.Builder<ImmutableList<Grip>> easy =
        ImmutableList.builderWithExpectedSize(allGrips.size());
    int first = 0;
    int next = 0;
    for (int m = 0; m < moments.size(); m++) {
      long now = moments.get(m).startMicros();
      while (next < moments.size() && moments.get(next).startMicros() - now <= NEARBY) {
        nearbyPositions[lowestPosition(allGrips.get(next)).rank()]++;
        next++;
      }
      while (now - moments.get(first).startMicros() > NEARBY) {
        nearbyPositions[lowestPosition(allGrips.get(first)).rank()]--;
        first++;
      }
      int needed = highest(nearbyPositions);
      easy.add(upTo(allGrips.get(m), needed <= alwaysAllowed ? alwaysAllowed : needed + MARGIN));
    }
    return easy.build();
  }

  private static int highest(int[] nearbyPositions) {
    int highest = HIGHEST;
    while (highest > 0 && nearbyPositions[highest] == 0) {
      highest--;
    }
    return highest;
  }

  private ImmutableList<Grip> upTo(ImmutableList<Grip> grips, int position) {
    if (position >= HIGHEST) {
      return grips;
    }
    Cached known = cached(grips);
    if (known.upTo.get(position) == null) {
      ImmutableList<Grip> low =
          grips.stream()
              .filter(grip -> grip.frame().position().rank() <= position)
              .collect(ImmutableList.toImmutableList());
      // If two threads compute it at once, the first result wins, because costs are cached by it.
      known.upTo.compareAndSet(position, null, low.isEmpty() ? grips : plain(low));
    }
    return known.upTo.get(position);
  }

  /**
   * Removes grips with an easier equivalent. On violin and viola these are respelled notes, and
   * half position if 1st position has a grip. On cello and bass these are open hands with the same
   * fingers in the same places as a closed hand.
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

  /** Returns whether the other grip has the same fingers in the same places, with a closed hand. */
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

  private Cached cached(ImmutableList<Grip> grips) {
    return cache.computeIfAbsent(grips, all -> new Cached(lowest(all)));
  }

  private static Position lowest(ImmutableList<Grip> grips) {
    return grips.stream()
        .map(grip -> grip.frame().position())
        .min(Comparator.naturalOrder())
        .orElse(Position.THUMB);
  }
}
