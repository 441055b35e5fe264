package fingering.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableSet;
import fingering.player.PlayerStore.Saved;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlayerStoreTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
  private static final Player FIRST = Player.UNKNOWN.withPositions(ImmutableSet.of(Position.FIRST));
  private static final Player THIRD =
      FIRST.withPositions(ImmutableSet.of(Position.FIRST, Position.THIRD));

  @TempDir Path folder;

  private Path file() {
    return folder.resolve("imke.yaml");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theTextBeforeTheFirstChangeOfADayIsKeptAndRemarksStay() throws IOException {
    assertThat(PlayerStore.save(file(), FIRST, Optional.empty(), DAY).copy()).isEmpty();
    Files.writeString(file(), "# Imke\npositions: 1\n");
    StoredPlayer read = StoredPlayer.read(file());

    Saved saved = PlayerStore.save(file(), THIRD, Optional.of(read), DAY);

    assertThat(saved.copy()).contains(folder.resolve("imke.yaml.2026-12-01~"));
    assertThat(saved.copy().orElseThrow()).hasContent("# Imke\npositions: 1");
    assertThat(saved.player()).isEqualTo(StoredPlayer.read(file()));
    assertThat(file()).hasContent("# Imke\npositions: [1, 3]");
    assertThat(names()).containsExactly("imke.yaml", "imke.yaml.2026-12-01~");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "shopping: milk", "score: a.xml", "positions: [", "hand: huge"})
  void anotherFileIsNeverReplaced(String text) throws IOException {
    Files.writeString(file(), text);

    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PlayerStore.save(file(), FIRST, Optional.empty(), DAY))
        .withMessageContaining("is not a player file, or has a mistake, and is not replaced");
    assertThat(file()).hasContent(text);
    assertThat(names()).containsExactly("imke.yaml");
  }

  @Test
  void aPlayerThatChangedSinceItWasReadIsNotReplaced() throws IOException {
    PlayerStore.save(file(), FIRST, Optional.empty(), DAY);
    StoredPlayer read = StoredPlayer.read(file());
    Files.writeString(file(), "positions: 2\n");

    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PlayerStore.save(file(), THIRD, Optional.of(read), DAY))
        .withMessageContaining("has changed since it was read");
    assertThat(file()).hasContent("positions: 2");
    assertThat(names()).containsExactly("imke.yaml");
  }

  @Test
  void whatCannotBeWrittenLeavesNoFile() throws IOException {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PlayerStore.save(file(), Player.UNKNOWN, Optional.empty(), DAY));
    assertThat(names()).isEmpty();
  }
}
