package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.LinkedHashMultimap;
import com.google.common.collect.SetMultimap;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart.Tuplet;
import fingering.music.print.PrintedPart.Tuplet.Numbers;
import fingering.music.print.Side;
import fingering.musicxml.element.Quarters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The tuplets of a part whose file has the lengths of their notes but no signs for them. Some
 * programs leave out the signs; a player needs the numbers all the same.
 */
final class UnmarkedTuplets {
  private final ImmutableList.Builder<Tuplet> tuplets = ImmutableList.builder();
  private final List<PrintedNote> open = new ArrayList<>();

  private UnmarkedTuplets() {}

  static ImmutableList<Tuplet> of(List<PrintedMeasure> measures) {
    UnmarkedTuplets found = new UnmarkedTuplets();
    for (PrintedMeasure measure : measures) {
      SetMultimap<String, PrintedNote> voices = LinkedHashMultimap.create();
      measure.notes().stream()
          .filter(note -> !note.grace() && !note.chord())
          .forEach(note -> voices.put(note.voice(), note));
      for (String voice : voices.keySet()) {
        voices.get(voice).forEach(found::add);
        found.open.clear();
      }
    }
    return found.tuplets.build();
  }

  private void add(PrintedNote note) {
    if (!open.isEmpty() && open.get(0).tuplet() != note.tuplet()) {
      open.clear();
    }
    if (note.tuplet() > 0) {
      open.add(note);
      if (complete()) {
        close();
      }
    }
  }

  /** Whether the notes fill a time that can be written without a tuplet: three of a triplet. */
  private boolean complete() {
    BigFraction sum = BigFraction.ZERO;
    BigFraction shortest = open.get(0).length();
    for (PrintedNote note : open) {
      sum = sum.add(note.length());
      shortest = Quarters.compare(note.length(), shortest) < 0 ? note.length() : shortest;
    }
    BigFraction whole = shortest.multiply(open.get(0).tuplet());
    return sum.getDenominator().bitCount() == 1 && Quarters.compare(sum, whole) >= 0;
  }

  private void close() {
    PrintedNote first = open.get(0);
    PrintedNote last = open.get(open.size() - 1);
    BigFraction ratio = first.length().divide(quarters(first.value()));
    BigFraction normal = ratio.multiply(first.tuplet());
    open.clear();
    if (normal.getDenominator().bitLength() == 1 && normal.signum() > 0) {
      tuplets.add(
          new Tuplet(
              first.address(),
              last.address(),
              first.tuplet(),
              normal.getNumerator().intValue(),
              Optional.empty(),
              Numbers.ACTUAL,
              Side.AUTO));
    }
  }

  /** The length of a note value outside of tuplets. */
  private static BigFraction quarters(PrintedNote.Value value) {
    BigFraction length = value.part() == 0 ? BigFraction.of(8) : BigFraction.of(4, value.part());
    BigFraction added = length;
    for (int dot = 0; dot < value.dots(); dot++) {
      added = added.divide(2);
      length = length.add(added);
    }
    return length;
  }
}
