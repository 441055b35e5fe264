package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.timeline.PartTimeline.StyleChange;
import fingering.musicxml.words.StyleWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Collects the words for the playing style in a part. They hold until other words (common
 * practice).
 */
public final class StyleMarks {
  private final List<StyleChange> changes = new ArrayList<>();

  /**
   * Adds the words of a direction.
   *
   * @param start quarter notes from the start of the part
   */
  public void words(String text, BigFraction start) {
    StyleWords.read(text).ifPresent(style -> changes.add(new StyleChange(start, style)));
  }

  /** Returns the changes in order of time. */
  public ImmutableList<StyleChange> changes() {
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(StyleChange::start, Quarters.ORDER), changes);
  }
}
