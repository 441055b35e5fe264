package fingering.player;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import fingering.userfile.UserFileStore;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Saves player files, and never replaces another file. The text is written beside the file and then
 * moved into place, so that the file holds the old text or the new one, whenever the program ends.
 */
public final class PlayerStore {
  private static final UserFileStore<Player> STORE =
      new UserFileStore<>(
          "a player file",
          "remove some of its remarks",
          PlayerFile::parse,
          PlayerFile::text,
          PlayerFile::update);

  private PlayerStore() {}

  /**
   * What was saved.
   *
   * @param player the player as saved
   * @param copy the copy of the text before, if this is the first change of the day
   * @param lostRemarks the remarks of the text before that are gone
   */
  public record Saved(
      StoredPlayer player, Optional<Path> copy, ImmutableList<String> lostRemarks) {}

  /**
   * Saves a player file.
   *
   * @param file the file; if there is one, it must be a player file
   * @param before the player as read from that file, if it was; the file must not have changed
   *     since
   * @param today the day, for the name of the copy: {@code imke.yaml.2026-12-12~} keeps what the
   *     file said before the first change of that day
   * @throws FingeringException if the file is not a player file, has changed since it was read, or
   *     cannot be written, or if a player file cannot say it; the message is one sentence, and the
   *     file is as it was
   */
  public static Saved save(
      Path file, Player player, Optional<StoredPlayer> before, LocalDate today) {
    UserFileStore.Saved saved = STORE.save(file, player, before.map(StoredPlayer::text), today);
    return new Saved(
        new StoredPlayer(file, player, saved.text()), saved.copy(), saved.lostRemarks());
  }
}
