package fingering.check;

import fingering.musicxml.file.MeasureLines;
import fingering.playability.ScoreCheck;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A file after the check.
 *
 * @param file the file, as it was named
 * @param check what was found; empty where the file could not be checked
 * @param problem why it could not be checked, one sentence that names the file; empty where it was
 * @param lines the lines on which its measures begin; empty where the file is not read by lines, or
 *     nobody asked
 */
public record CheckedFile(
    Path file, Optional<ScoreCheck> check, String problem, Optional<MeasureLines> lines) {

  /** A file that was checked. */
  public static CheckedFile of(Path file, ScoreCheck check, Optional<MeasureLines> lines) {
    return new CheckedFile(file, Optional.of(check), "", lines);
  }

  /**
   * A file that could not be checked.
   *
   * @param said what went wrong; the name of the file is put before it where it is not in it
   */
  public static CheckedFile refused(Path file, String said) {
    String name = file.toString();
    String problem = said.contains(name) ? said : name + ": " + said;
    return new CheckedFile(file, Optional.empty(), problem, Optional.empty());
  }

  /** The name of the file with strokes between folders, as in an address. */
  public String name() {
    return file.toString().replace('\\', '/');
  }

  /** What to call the score: its title, or the name of the file where it has none. */
  public String title() {
    return check
        .map(ScoreCheck::title)
        .filter(title -> !title.isBlank())
        .orElseGet(() -> String.valueOf(file.getFileName()));
  }
}
