package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.PlayingStyle;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.timeline.PartTimeline.StyleChange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The playing style that words ask for, from one time to the next. A new tempo ends it: after
 * <i>dolce</i> in the Adagio, the Allegro starts without it.
 */
final class StyleSpans {

  /** Where two words are printed together, one that asks for a style counts. */
  private static final Comparator<StyleChange> IN_TIME =
      Comparator.comparing(StyleChange::start, Quarters.ORDER)
          .thenComparing(change -> change.style() != PlayingStyle.PLAIN);

  private final ImmutableList<StyleChange> changes;
  private int next;
  private PlayingStyle current = PlayingStyle.PLAIN;

  /**
   * Starts at the beginning of a part.
   *
   * @param words the words for a style
   * @param tempi the times of new tempi in words
   */
  StyleSpans(List<StyleChange> words, List<BigFraction> tempi) {
    List<StyleChange> all = new ArrayList<>(words);
    tempi.forEach(start -> all.add(new StyleChange(start, PlayingStyle.PLAIN)));
    changes = ImmutableList.sortedCopyOf(IN_TIME, all);
  }

  /**
   * Returns the style at a time.
   *
   * @param start quarter notes from the start of the part, not before that of the last call
   */
  PlayingStyle at(BigFraction start) {
    while (next < changes.size() && Quarters.compare(changes.get(next).start(), start) <= 0) {
      current = changes.get(next).style();
      next++;
    }
    return current;
  }
}
