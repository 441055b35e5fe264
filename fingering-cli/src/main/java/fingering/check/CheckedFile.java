package fingering.check;

import fingering.musicxml.file.MeasureLines;
import fingering.playability.ScoreCheck;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The result of checking a file.
 *
 * @param file the file, as the user named it
 * @param check the findings; empty if the file could not be checked
 * @param problem why it could not be checked, one sentence that names the file; otherwise empty
 * @param lines the lines on which its measures begin; empty if they were not requested, or if the
 *     file is not plain text
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
   * @param message what went wrong; the name of the file is added in front unless it is in it
   */
  public static CheckedFile refused(Path file, String message) {
    String name = file.toString();
    String problem = message.contains(name) ? message : name + ": " + message;
    return new CheckedFile(file, Optional.empty(), problem, Optional.empty());
  }

  /** The name of the file with slashes between folders, as in a URI. */
  public String name() {
    return file.toString().replace('\\', '/');
  }

  /** The title of the score, or the name of the file if it has none. */
  public String title() {
    return check
        .map(ScoreCheck::title)
        .filter(title -> !title.isBlank())
        .orElseGet(() -> String.valueOf(file.getFileName()));
  }
}
