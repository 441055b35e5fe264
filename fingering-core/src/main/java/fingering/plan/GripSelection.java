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
import java.util.stream.Stream;

/** The grips that a brief leaves at each moment. */
final class GripSelection implements NodeFilter {
  private final ImmutableList<ImmutableList<Grip>> grips;

  /** By moment, the grips that are not left. */
  private final BitSet[] closed;

  private boolean any;

  private GripSelection(ImmutableList<ImmutableList<Grip>> grips) {
    this.grips = grips;
    closed = new BitSet[grips.size()];
  }

  /**
   * The grips of each moment that keep every limit of a brief; none where none does. Of these the
   * ones that are on the string that words ask for, where there are such, and, where the brief
   * keeps what is printed, in the position that words name.
   *
   * @throws FingeringException if a limit speaks of measures or notes that are not there
   */
  static GripSelection of(Brief brief, Passage passage, ImmutableList<ImmutableList<Grip>> grips) {
    GripSelection selection = new GripSelection(grips);
    for (GripDemand limit : brief.limits()) {
      BitSet concerned = limit.concerns(passage);
      for (int m = concerned.nextSetBit(0); m >= 0; m = concerned.nextSetBit(m + 1)) {
        Moment moment = passage.moments().get(m);
        selection.keep(m, grip -> limit.keeps(moment, grip), limit.yields());
      }
    }
    if (brief.keepPrinted()) {
      for (int m = 0; m < grips.size(); m++) {
        Moment moment = passage.moments().get(m);
        selection.keep(m, grip -> grip.asPrinted(moment), true);
      }
    }
    for (PrintedString asked : passage.oneString()) {
      for (int m = 0; m < grips.size(); m++) {
        Moment moment = passage.moments().get(m);
        if (asked.concerns(moment)) {
          selection.keep(m, grip -> onString(asked, moment, grip), true);
        }
      }
    }
    if (brief.keepPrinted()) {
      passage.positions().forEach(asked -> selection.keep(asked, passage));
    }
    return selection;
  }

  /** Words without a line hold no more where the hand cannot be there: it has to move. */
  private void keep(PrintedPosition asked, Passage passage) {
    if (asked.position().isEmpty()) {
      return;
    }
    StayIn there = new StayIn(asked.position().get(), MeasureSpan.WHOLE);
    for (int m = 0; m < grips.size(); m++) {
      Moment moment = passage.moments().get(m);
      if (asked.concerns(moment)
          && !keep(m, grip -> there.keeps(moment, grip), true)
          && !asked.line()) {
        return;
      }
    }
  }

  private static boolean onString(PrintedString asked, Moment moment, Grip grip) {
    ImmutableList<Note> notes = grip.notes(moment);
    for (int i = 0; i < notes.size(); i++) {
      if (moment.starting().contains(notes.get(i))
          && asked.notes().contains(notes.get(i).address())
          && grip.placements().get(i).string() != asked.string()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Closes the grips that are not wanted, but where it yields and none at all would be left;
   * returns whether it has.
   */
  private boolean keep(int moment, Predicate<Grip> wanted, boolean yields) {
    BitSet left = new BitSet();
    for (int g = 0; g < grips.get(moment).size(); g++) {
      left.set(g, at(moment, g) || !wanted.test(grips.get(moment).get(g)));
    }
    if (!yields || left.cardinality() < grips.get(moment).size()) {
      closed[moment] = left;
      any = true;
      return true;
    }
    return false;
  }

  @Override
  public boolean at(int moment, int grip) {
    return closed[moment] != null && closed[moment].get(grip);
  }

  /** What the search must not take. */
  NodeFilter closing() {
    return any ? this : NodeFilter.NONE;
  }

  /** The grips left at a moment. */
  Stream<Grip> left(int moment) {
    ImmutableList<Grip> all = grips.get(moment);
    return java.util.stream.IntStream.range(0, all.size())
        .filter(g -> !at(moment, g))
        .mapToObj(all::get);
  }

  /** The moments at which nothing is left. */
  BitSet empty() {
    BitSet empty = new BitSet();
    for (int m = 0; m < grips.size(); m++) {
      empty.set(m, closed[m] != null && closed[m].cardinality() == grips.get(m).size());
    }
    return empty;
  }
}
