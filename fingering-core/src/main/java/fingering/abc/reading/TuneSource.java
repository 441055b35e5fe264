package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.SourceLine;

/**
 * A tune as typed.
 *
 * @param number the number in its X: field, empty if it has none
 * @param title its first title, empty if it has none
 * @param lines its lines, those of the file header first
 * @param remarks what was left out around it, one sentence each, without full stop
 */
public record TuneSource(
    String number, String title, ImmutableList<SourceLine> lines, ImmutableList<String> remarks) {

  /**
   * Returns the tune in these lines.
   *
   * @param shared the lines of the file header
   * @param own the lines of the tune
   * @param remarks what was left out around it, one sentence each, without full stop
   */
  public static TuneSource of(
      ImmutableList<SourceLine> shared,
      ImmutableList<SourceLine> own,
      ImmutableList<String> remarks) {
    return new TuneSource(
        first('X', own),
        first('T', own),
        ImmutableList.<SourceLine>builder().addAll(shared).addAll(own).build(),
        remarks);
  }

  private static String first(char letter, ImmutableList<SourceLine> lines) {
    return lines.stream()
        .filter(line -> line.field() && line.letter() == letter)
        .map(line -> line.content().rest())
        .findFirst()
        .orElse("");
  }

  /** Returns number and title, as in a list of choices: {@code 2 Song over the Weir}. */
  @Override
  public String toString() {
    return title.isEmpty() ? number : number + " " + title;
  }
}
