package fingering.player;

import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import java.nio.file.Path;

/**
 * A player file on disk.
 *
 * @param file the file
 * @param player what it says
 * @param text its text, as read
 */
public record StoredPlayer(Path file, Player player, String text) {
  /**
   * Reads a player file.
   *
   * @throws FingeringException if the file cannot be read or is not a player file; the message is
   *     one sentence
   */
  public static StoredPlayer read(Path file) {
    String text = SmallFile.text(file, "a player file");
    return new StoredPlayer(file, PlayerFile.parse(file.toString(), text), text);
  }
}
