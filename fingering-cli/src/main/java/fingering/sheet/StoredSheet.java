package fingering.sheet;

import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import java.nio.file.Path;

/**
 * An audition sheet on disk, which may have no pieces yet.
 *
 * @param file its file
 * @param content what it says
 * @param text its text, as read
 */
public record StoredSheet(Path file, SheetContent content, String text) {
  /**
   * Reads a sheet.
   *
   * @throws FingeringException if the file cannot be read or is not a sheet; the message is one
   *     sentence
   */
  public static StoredSheet read(Path file) {
    String text = SmallFile.text(file, AuditionSheetFile.WHAT);
    return new StoredSheet(file, AuditionSheetFile.content(file.toString(), text), text);
  }
}
