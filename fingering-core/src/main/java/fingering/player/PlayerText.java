package fingering.player;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.userfile.UserText;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Writes players as YAML. */
final class PlayerText {
  private PlayerText() {}

  /** The lines of each key that the player has, in their order. */
  static ImmutableMap<String, String> keys(Player player) {
    ImmutableMap.Builder<String, String> keys = ImmutableMap.builder();
    put(keys, "preset", player.preset().map(UserText::value));
    put(keys, "instrument", player.instrument().map(Instrument::id));
    put(keys, "size", player.size().map(UserText::value));
    put(keys, "hand", player.hand().map(PlayerText::hand));
    put(keys, "positions", player.positions().map(all -> list(all, Object::toString)));
    put(keys, "patterns", player.patterns().map(all -> list(all, FingerPattern::word)));
    put(keys, "extensions", player.extensions().map(all -> listOrNone(all, Extension::word)));
    put(keys, "shifts", player.shifts().map(all -> listOrNone(all, ShiftKind::word)));
    return keys.buildOrThrow();
  }

  private static void put(
      ImmutableMap.Builder<String, String> keys, String key, Optional<String> value) {
    value.ifPresent(text -> keys.put(key, key + ": " + text + "\n"));
  }

  private static String hand(LeftHand hand) {
    ImmutableMap<LeftHand, String> words =
        ImmutableMap.of(
            LeftHand.SMALL, "small", LeftHand.MEDIUM, "medium", LeftHand.LARGE, "large");
    String word = words.get(hand);
    if (word != null) {
      return word;
    }
    if (hand.millimetres().isEmpty()) {
      throw new FingeringException(
          "a player file says of a hand that it is small, medium or large, or its reach in mm");
    }
    return new BigDecimal(Double.toString(hand.millimetres().getAsDouble()))
            .stripTrailingZeros()
            .toPlainString()
        + "mm";
  }

  /** A list, in the order of what is listed. */
  private static <T extends Comparable<? super T>> String list(
      ImmutableSet<T> items, Function<T, String> word) {
    return ImmutableList.sortedCopyOf(items).stream()
        .map(word)
        .map(UserText::value)
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private static <T extends Comparable<? super T>> String listOrNone(
      ImmutableSet<T> items, Function<T, String> word) {
    return items.isEmpty() ? "none" : list(items, word);
  }
}
