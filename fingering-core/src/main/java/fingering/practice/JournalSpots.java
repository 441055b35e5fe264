package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Range;
import fingering.demand.MeasureSpan;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.util.Comparator;
import java.util.Optional;

/** The measures of a passage that a journal says are not clean at the goal yet. */
final class JournalSpots {
  /**
   * Measures that are not clean yet.
   *
   * @param measures the measures as in the journal
   * @param indices their indices in the part
   * @param clean the last clean tempo, below the goal
   * @param bad whether the last entry is about a bad day
   */
  record Spot(MeasureSpan measures, Range<Integer> indices, Tempo clean, boolean bad) {
    boolean overlaps(Range<Integer> other) {
      return indices.isConnected(other);
    }
  }

  private JournalSpots() {}

  /**
   * Returns the spots in score order. Measures that the passage does not have are left out.
   *
   * @param whole the clean tempo of the whole piece, for measures in which nothing was clean
   */
  static ImmutableList<Spot> of(Journal journal, Passage passage, Tempo whole, Tempo goal) {
    ImmutableList.Builder<Spot> spots = ImmutableList.builder();
    for (MeasureSpan span : journal.spans()) {
      Journal.Standing standing = journal.standing(span);
      Tempo clean = standing.clean().orElse(whole);
      boolean below = clean.quartersPerMinute().compareTo(goal.quartersPerMinute()) < 0;
      if (standing.own() && below) {
        indices(span, passage)
            .ifPresent(found -> spots.add(new Spot(span, found, clean, standing.bad())));
      }
    }
    return ImmutableList.sortedCopyOf(
        Comparator.<Spot>comparingInt(spot -> spot.indices().lowerEndpoint())
            .thenComparingInt(spot -> spot.indices().upperEndpoint()),
        spots.build());
  }

  private static Optional<Range<Integer>> indices(MeasureSpan span, Passage passage) {
    try {
      return Optional.of(span.measureIndices(passage));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }
}
