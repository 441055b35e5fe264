package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.demand.Limit;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.OneString;
import fingering.music.Passage;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** The grips that a brief leaves at each moment. */
final class Selection {
  private Selection() {}

  /**
   * The grips of each moment that keep every limit of a brief; none where none does. Of these the
   * ones that are on the string that words ask for, where there are such.
   *
   * @throws IllegalArgumentException if a limit speaks of measures or notes that are not there
   */
  static ImmutableList<ImmutableList<Grip>> of(
      Brief brief, Passage passage, ImmutableList<ImmutableList<Grip>> grips) {
    List<ImmutableList<Grip>> left = new ArrayList<>(grips);
    for (Limit limit : brief.limits()) {
      BitSet concerned = limit.concerns(passage);
      for (int m = concerned.nextSetBit(0); m >= 0; m = concerned.nextSetBit(m + 1)) {
        Moment moment = passage.moments().get(m);
        left.set(m, keeping(limit, moment, left.get(m)));
      }
    }
    if (brief.keepPrinted()) {
      for (int m = 0; m < left.size(); m++) {
        left.set(m, asPrinted(passage.moments().get(m), left.get(m)));
      }
    }
    for (OneString asked : passage.oneString()) {
      for (int m = 0; m < left.size(); m++) {
        Moment moment = passage.moments().get(m);
        if (asked.concerns(moment)) {
          left.set(m, onString(asked, moment, left.get(m)));
        }
      }
    }
    return ImmutableList.copyOf(left);
  }

  private static ImmutableList<Grip> onString(
      OneString asked, Moment moment, ImmutableList<Grip> grips) {
    ImmutableList<Grip> kept =
        grips.stream()
            .filter(grip -> onString(asked, moment, grip))
            .collect(ImmutableList.toImmutableList());
    return kept.isEmpty() ? grips : kept;
  }

  private static boolean onString(OneString asked, Moment moment, Grip grip) {
    ImmutableList<Note> notes = grip.notes(moment);
    for (int i = 0; i < notes.size(); i++) {
      if (moment.struck().contains(notes.get(i))
          && asked.notes().contains(notes.get(i).address())
          && grip.placements().get(i).string() != asked.string()) {
        return false;
      }
    }
    return true;
  }

  private static ImmutableList<Grip> keeping(
      Limit limit, Moment moment, ImmutableList<Grip> grips) {
    ImmutableList<Grip> kept =
        grips.stream()
            .filter(grip -> limit.keeps(moment, grip))
            .collect(ImmutableList.toImmutableList());
    return kept.isEmpty() && limit.yields() ? grips : kept;
  }

  /** The grips that agree with what is printed; all of them where none does. */
  private static ImmutableList<Grip> asPrinted(Moment moment, ImmutableList<Grip> grips) {
    ImmutableList<Grip> kept =
        grips.stream()
            .filter(grip -> grip.asPrinted(moment))
            .collect(ImmutableList.toImmutableList());
    return kept.isEmpty() ? grips : kept;
  }

  /** The moments at which nothing is left. */
  static BitSet empty(ImmutableList<ImmutableList<Grip>> grips) {
    BitSet empty = new BitSet();
    for (int m = 0; m < grips.size(); m++) {
      empty.set(m, grips.get(m).isEmpty());
    }
    return empty;
  }
}
