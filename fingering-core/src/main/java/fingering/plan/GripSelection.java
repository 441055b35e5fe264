package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.demand.GripDemand;
import fingering.demand.MeasureSpan;
import fingering.demand.StayIn;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.PrintedPosition;
import fingering.music.PrintedString;
import fingering.search.NodeFilter;
import fingering.tables.FingeringException;
import java.util.BitSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The grips that a brief allows at each moment. */
final class GripSelection implements NodeFilter {
  private final ImmutableList<ImmutableList<Grip>> grips;

  /** The indices of the excluded grips by moment; null if none was excluded there. */
  private final BitSet[] excluded;

  private boolean anyExcluded;

  private GripSelection(ImmutableList<ImmutableList<Grip>> grips) {
    this.grips = grips;
    excluded = new BitSet[grips.size()];
  }

  /**
   * Selects the grips of each moment that meet every grip demand of a brief. Soft constraints
   * narrow them further where at least one grip remains: printed fingers, strings and positions if
   * the brief keeps them, and the string that printed words ask for.
   *
   * @throws FingeringException if a demand names measures or notes that the passage does not have
   */
  static GripSelection of(Brief brief, Passage passage, ImmutableList<ImmutableList<Grip>> grips) {
    GripSelection selection = new GripSelection(grips);
    for (GripDemand demand : brief.gripDemands()) {
      BitSet moments = demand.moments(passage);
      for (int m = moments.nextSetBit(0); m >= 0; m = moments.nextSetBit(m + 1)) {
        Moment moment = passage.moments().get(m);
        selection.restrict(m, grip -> demand.allows(moment, grip), demand.soft());
      }
    }
    if (brief.keepPrinted()) {
      for (int m = 0; m < grips.size(); m++) {
        Moment moment = passage.moments().get(m);
        selection.restrict(m, grip -> grip.matchesPrinted(moment), true);
      }
    }
    for (PrintedString words : passage.stringWords()) {
      for (int m = 0; m < grips.size(); m++) {
        Moment moment = passage.moments().get(m);
        if (words.appliesTo(moment)) {
          selection.restrict(m, grip -> onString(words, moment, grip), true);
        }
      }
    }
    if (brief.keepPrinted()) {
      passage.positionWords().forEach(words -> selection.restrict(words, passage));
    }
    return selection;
  }

  /**
   * Keeps the hand in a printed position. Words without a line end at the first moment that is out
   * of reach in the position, because the hand has to move there.
   */
  private void restrict(PrintedPosition words, Passage passage) {
    if (words.position().isEmpty()) {
      return;
    }
    StayIn stay = new StayIn(words.position().get(), MeasureSpan.WHOLE);
    for (int m = 0; m < grips.size(); m++) {
      Moment moment = passage.moments().get(m);
      if (words.appliesTo(moment)
          && !restrict(m, grip -> stay.allows(moment, grip), true)
          && !words.line()) {
        return;
      }
    }
  }

  private static boolean onString(PrintedString words, Moment moment, Grip grip) {
    ImmutableList<Note> notes = grip.notes(moment);
    for (int i = 0; i < notes.size(); i++) {
      if (moment.starting().contains(notes.get(i))
          && words.notes().contains(notes.get(i).address())
          && grip.placements().get(i).string() != words.string()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Excludes the grips of a moment that fail a test.
   *
   * @param soft whether the test is ignored if no grip would remain
   * @return whether the test was applied
   */
  private boolean restrict(int moment, Predicate<Grip> test, boolean soft) {
    BitSet failing = new BitSet();
    for (int g = 0; g < grips.get(moment).size(); g++) {
      failing.set(g, at(moment, g) || !test.test(grips.get(moment).get(g)));
    }
    if (soft && failing.cardinality() == grips.get(moment).size()) {
      return false;
    }
    excluded[moment] = failing;
    anyExcluded = true;
    return true;
  }

  @Override
  public boolean at(int moment, int grip) {
    return excluded[moment] != null && excluded[moment].get(grip);
  }

  /** The filter that keeps the search from using excluded grips. */
  NodeFilter filter() {
    return anyExcluded ? this : NodeFilter.NONE;
  }

  /** The grips allowed at a moment. */
  Stream<Grip> allowed(int moment) {
    ImmutableList<Grip> all = grips.get(moment);
    return IntStream.range(0, all.size()).filter(g -> !at(moment, g)).mapToObj(all::get);
  }

  /** The moments at which no grip is allowed. */
  BitSet infeasibleMoments() {
    BitSet infeasible = new BitSet();
    for (int m = 0; m < grips.size(); m++) {
      infeasible.set(m, excluded[m] != null && excluded[m].cardinality() == grips.get(m).size());
    }
    return infeasible;
  }
}
