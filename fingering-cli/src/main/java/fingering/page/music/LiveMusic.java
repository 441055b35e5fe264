package fingering.page.music;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.page.live.AnswerView;

/**
 * The music of an open score with the fingers of its plans, drawn for a window.
 *
 * @param key the letter, place and name of each plan
 * @param signs what the signs in the music mean
 * @param lines the lines of music
 */
public record LiveMusic(
    ImmutableList<String> key, String signs, ImmutableList<AnswerView.Line> lines) {
  /** The narrowest window, in pixels, in which long lines can be read. */
  private static final int WIDE_WINDOW = 700;

  /**
   * Draws the music of plans.
   *
   * @param window the width of the window in pixels
   */
  public static LiveMusic of(Passage passage, PrintedPart printed, Lanes lanes, int window) {
    double width = window < WIDE_WINDOW ? MusicPanel.NARROW : MusicPanel.WIDE;
    return new LiveMusic(
        lanes.key(), lanes.signs(), new MusicPanel(passage, printed, lanes).live(width));
  }

  /**
   * The lines that a page must replace to show this music instead of another. Empty if all fit.
   *
   * @param shown what the page shows, with the same lines in the same order
   */
  public ImmutableList<AnswerView.Line> changedFrom(LiveMusic shown) {
    ImmutableSet<AnswerView.Line> old = ImmutableSet.copyOf(shown.lines);
    return lines.stream()
        .filter(line -> !old.contains(line))
        .collect(ImmutableList.toImmutableList());
  }

  /** Whether this music has the same measures in the same lines as another. */
  public boolean fitsLinesOf(LiveMusic other) {
    return lines.stream()
        .map(AnswerView.Line::id)
        .toList()
        .equals(other.lines.stream().map(AnswerView.Line::id).toList());
  }
}
