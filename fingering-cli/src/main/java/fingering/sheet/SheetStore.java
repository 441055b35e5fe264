package fingering.sheet;

import fingering.tables.FingeringException;
import fingering.userfile.FileUpdate;
import fingering.userfile.UserFileStore;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Saves audition sheets. A sheet may be saved over; any other file never. What does not change
 * stays as it was written, with its remarks.
 */
public final class SheetStore {
  private static final UserFileStore<SheetContent> STORE =
      new UserFileStore<>(
          AuditionSheetFile.WHAT,
          "remove some of its pieces",
          AuditionSheetFile::content,
          sheet -> String.join("", SheetText.keys(sheet).values()),
          SheetStore::update);

  private SheetStore() {}

  private static FileUpdate update(String before, SheetContent sheet) {
    return FileUpdate.of(
        before, sheet, text -> AuditionSheetFile.content("the sheet", text), SheetText::keys);
  }

  /**
   * Saves a sheet.
   *
   * @param file the file; if there is one, it must be a sheet
   * @param before the text as it was read from that file, if it was; the file must not have changed
   *     since
   * @param today the day, for the name of the copy of what the sheet said before
   * @throws FingeringException if the file is not a sheet, has changed since it was read, or cannot
   *     be written, or the sheet has a mistake; the message is one sentence, and the file is as it
   *     was
   */
  public static UserFileStore.Saved save(
      Path file, SheetContent sheet, Optional<String> before, LocalDate today) {
    AuditionSheetFile.content(
        String.valueOf(file.getFileName()), String.join("", SheetText.keys(sheet).values()));
    return STORE.save(file, sheet, before, today);
  }
}
