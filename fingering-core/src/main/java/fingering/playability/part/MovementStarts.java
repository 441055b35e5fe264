package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.print.PrintedMeasure.Bar;
import java.util.BitSet;

/**
 * Finds where movements begin, because there is time for any change before them. A movement begins
 * after a final bar line, or where measure numbers start again at 1 (or at 0, with a pickup).
 *
 * <p>A double bar, or a lower number than before, is not enough: both occur within movements, and
 * to assume a pause there would hide findings. The reading of position numerals has a wider rule
 * that includes both: after a double bar, a Roman numeral more likely counts a movement than names
 * a position. The two rules err on different sides and so are kept apart.
 */
public final class MovementStarts {
  private MovementStarts() {}

  /** Returns the indices of the moments of the passage that begin a movement. */
  public static BitSet of(Passage passage, PrintedNoteIndex prints) {
    BitSet measures = new BitSet();
    for (int i = 1; i < passage.measures().size(); i++) {
      boolean begins =
          numberedFromStart(passage.measures(), i)
              || prints.part().measures().get(i - 1).end() == Bar.FINAL;
      measures.set(passage.measures().get(i).index(), begins);
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

  /** Returns whether numbering starts again here; measure 1 after a pickup 0 does not count. */
  private static boolean numberedFromStart(ImmutableList<Measure> measures, int i) {
    String number = measures.get(i).number();
    return number.equals("0") || (number.equals("1") && !measures.get(i - 1).number().equals("0"));
  }
}
