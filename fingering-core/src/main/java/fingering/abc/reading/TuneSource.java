package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.SourceLine;
import java.util.Optional;

/**
 * A tune as typed.
 *
 * @param number the number in its X: field, empty where it has none
 * @param title its first title, empty where it has none
 * @param lines its lines, those of the file's header first
 * @param behind the first line that stands behind it and belongs to no tune
 */
public record TuneSource(
    String number, String title, ImmutableList<SourceLine> lines, Optional<SourceLine> behind) {

  /** The tune in these lines. */
  public static TuneSource of(
      ImmutableList<SourceLine> shared,
      ImmutableList<SourceLine> own,
      Optional<SourceLine> behind) {
    return new TuneSource(
        first('X', own),
        first('T', own),
        ImmutableList.<SourceLine>builder().addAll(shared).addAll(own).build(),
        behind);
  }

  private static String first(char letter, ImmutableList<SourceLine> lines) {
    return lines.stream()
        .filter(line -> line.field() && line.letter() == letter)
        .map(line -> line.content().rest())
        .findFirst()
        .orElse("");
  }

  /** As in a list to choose from: {@code 2 Song over the Weir}. */
  @Override
  public String toString() {
    return title.isEmpty() ? number : number + " " + title;
  }
}
