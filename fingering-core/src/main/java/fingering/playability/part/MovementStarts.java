package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.PrintedMeasure.Bar;
import java.util.BitSet;

/** Finds where movements begin: there is time for everything before them. */
public final class MovementStarts {
  private MovementStarts() {}

  /** The moments with which a movement begins. */
  public static BitSet of(Passage passage, PrintedNoteIndex prints) {
    BitSet measures = new BitSet();
    for (int i = 1; i < passage.measures().size(); i++) {
      boolean anew =
          beginsCounting(passage.measures(), i)
              || prints.part().measures().get(i - 1).end() == Bar.FINAL;
      measures.set(passage.measures().get(i).index(), anew);
    }
    BitSet moments = new BitSet();
    ImmutableList<Moment> all = passage.moments();
    moments.set(0);
    for (int m = 1; m < all.size(); m++) {
      int before = all.get(m - 1).place().measureIndex();
      int now = all.get(m).place().measureIndex();
      int next = measures.nextSetBit(before + 1);
      moments.set(m, now > before && next >= 0 && next <= now);
    }
    return moments;
  }

  /** A pickup may be measure 0; the measure after it begins nothing. */
  private static boolean beginsCounting(ImmutableList<Measure> measures, int i) {
    String number = measures.get(i).number();
    return number.equals("0") || (number.equals("1") && !measures.get(i - 1).number().equals("0"));
  }
}
