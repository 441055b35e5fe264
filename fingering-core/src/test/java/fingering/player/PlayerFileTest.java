package fingering.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Position;
import fingering.userfile.FileUpdate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class PlayerFileTest {
  private static final String IMKE =
      """
      # Imke, fifth year

      positions: 1-3      # since spring
      instrument: viola
      hand: small  # still growing

      # the bow comes later
      shifts: [rest, open string]
      # the end
      """;

  @Property(tries = 500)
  void aPlayerIsReadBackAsWritten(@ForAll("players") Player player) {
    assertThat(PlayerFile.parse("imke.yaml", PlayerFile.text(player))).isEqualTo(player);
  }

  @Property(tries = 300)
  void aChangedPlayerIsReadBackAndTheRemarkAboveStays(
      @ForAll("players") Player before, @ForAll("players") Player after) {
    FileUpdate update = PlayerFile.update("# remark\n" + PlayerFile.text(before), after);

    assertThat(PlayerFile.parse("imke.yaml", update.text())).isEqualTo(after);
    assertThat(update.text()).startsWith("# remark\n");
    assertThat(update.lostRemarks()).isEmpty();
  }

  @Provide
  Arbitrary<Player> players() {
    return Arbitraries.of(Instruments.standard().all())
        .optional()
        .flatMap(PlayerFileTest::players)
        .filter(player -> !player.equals(Player.UNKNOWN));
  }

  private static Arbitrary<Player> players(Optional<Instrument> instrument) {
    List<FingerPattern> patterns =
        Arrays.stream(FingerPattern.values())
            .filter(pattern -> instrument.map(one -> pattern.fits(one.kind())).orElse(true))
            .toList();
    return Combinators.combine(
            Arbitraries.of(Weights.presets()).optional(),
            sizes(instrument).optional(),
            hands().optional(),
            some(positions(), 1).optional(),
            some(Arbitraries.of(patterns), 1).optional(),
            some(Arbitraries.of(Extension.class), 0).optional(),
            some(Arbitraries.of(ShiftKind.class), 0).optional())
        .as(
            (preset, size, hand, learned, hands, extensions, shifts) ->
                new Player(preset, instrument, size, hand, learned, hands, extensions, shifts));
  }

  private static Arbitrary<String> sizes(Optional<Instrument> instrument) {
    return instrument
        .map(one -> one.id().equals("viola") ? List.of("15.5", "375mm") : List.of("3/4", "1/2"))
        .map(Arbitraries::of)
        .orElse(Arbitraries.of("15.5", "a: b", "#1", "\"'", "null"));
  }

  private static Arbitrary<Position> positions() {
    return Arbitraries.oneOf(
        Arbitraries.integers().between(1, 47).map(Position::ofHalves),
        Arbitraries.just(Position.THUMB));
  }

  private static Arbitrary<LeftHand> hands() {
    return Arbitraries.oneOf(
        Arbitraries.of(LeftHand.SMALL, LeftHand.MEDIUM, LeftHand.LARGE),
        Arbitraries.integers().between(400, 2200).map(mm -> LeftHand.parse(mm / 10.0 + "mm")));
  }

  private static <T> Arbitrary<ImmutableSet<T>> some(Arbitrary<T> items, int least) {
    return items.set().ofMinSize(least).ofMaxSize(2).map(ImmutableSet::copyOf);
  }

  @Test
  void aNewFileHasAKeyOnEachLine() {
    Player player = PlayerFile.parse("imke.yaml", IMKE);

    assertThat(PlayerFile.text(player.withExtensions(ImmutableSet.of())))
        .isEqualTo(
            """
            instrument: viola
            hand: small
            positions: [1, 1½, 2, 2½, 3]
            extensions: none
            shifts: [rest, open string]
            """);
  }

  @Test
  void aChangeKeepsRemarksOrderAndTheLinesOfOtherKeys() {
    Player player = PlayerFile.parse("imke.yaml", IMKE);
    Player changed =
        new Player(
                Optional.of("intermediate"),
                player.instrument(),
                player.size(),
                Optional.of(LeftHand.MEDIUM),
                player.positions(),
                player.patterns(),
                player.extensions(),
                player.shifts())
            .withShifts(ImmutableSet.of(ShiftKind.SLUR, ShiftKind.REST));

    FileUpdate update = PlayerFile.update(IMKE, changed);

    assertThat(update.lostRemarks()).isEmpty();
    assertThat(update.text())
        .isEqualTo(
            IMKE.replace("hand: small", "hand: medium")
                .replace("[rest, open string]\n", "[rest, slur]\npreset: intermediate\n"));
  }

  @Test
  void anUnchangedPlayerKeepsTheTextToTheLetter() {
    Player player = PlayerFile.parse("imke.yaml", IMKE);

    assertThat(PlayerFile.update(IMKE, player)).isEqualTo(new FileUpdate(IMKE, ImmutableList.of()));
  }

  @Test
  void whatAPlayerFileCannotSayIsRefused() {
    Player player = PlayerFile.parse("imke.yaml", IMKE);
    for (Player wrong :
        List.of(
            Player.UNKNOWN,
            player.withPositions(ImmutableSet.of()),
            player.withPatterns(ImmutableSet.of()),
            player.withPatterns(ImmutableSet.of(FingerPattern.CLOSED)),
            withHand(player, LeftHand.SMALL.withLowThumb(true)),
            withHand(player, LeftHand.parse("102mm").withFourFingers(true)))) {
      assertThatExceptionOfType(FingeringException.class).isThrownBy(() -> PlayerFile.text(wrong));
      assertThatExceptionOfType(FingeringException.class)
          .isThrownBy(() -> PlayerFile.update(IMKE, wrong));
    }
  }

  private static Player withHand(Player player, LeftHand hand) {
    return new Player(
        player.preset(),
        player.instrument(),
        player.size(),
        Optional.of(hand),
        player.positions(),
        player.patterns(),
        player.extensions(),
        player.shifts());
  }
}
