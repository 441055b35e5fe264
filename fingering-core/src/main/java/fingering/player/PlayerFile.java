package fingering.player;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.NearWord;
import fingering.tables.Position;
import fingering.userfile.FileUpdate;
import fingering.userfile.KnownKeys;
import fingering.userfile.UserFields;
import fingering.userfile.UserFileException;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The text of a player file, in YAML. */
public final class PlayerFile {
  private static final KnownKeys KEYS =
      KnownKeys.of(
          "a player file",
          "preset: intermediate",
          "instrument: viola",
          "size: 15.5",
          "hand: medium",
          "positions: [1, 3]",
          "patterns: [0-1, 1-2]",
          "extensions: [fourth forward]",
          "shifts: [open string, rest]");

  private static final String FILE = "the player file";
  private static final Splitter RANGE = Splitter.on('-').trimResults();
  private static final Pattern SPACES = Pattern.compile("\\s+");

  private PlayerFile() {}

  /**
   * Reads a player file.
   *
   * @param name the name of the file, for messages
   * @throws UserFileException if the text is not a player file; the message is one sentence with
   *     file and line
   */
  public static Player parse(String name, String text) {
    UserFields fields = UserFields.parse(name, text, KEYS);
    Optional<Instrument> instrument = fields.value("instrument", Instruments.standard()::named);
    return new Player(
        fields.value("preset", Weights::presetName),
        instrument,
        fields.value("size", size -> checked(size, instrument)),
        fields.value("hand", LeftHand::parse),
        fields
            .list("positions", word -> range(tidy(word)))
            .map(all -> all.stream().flatMap(ImmutableList::stream))
            .map(all -> all.collect(ImmutableSet.toImmutableSet())),
        fields.list("patterns", patterns(instrument)).map(ImmutableSet::copyOf),
        fields
            .listOrNone(
                "extensions",
                word(
                    "extension", ImmutableList.copyOf(Extension.values()), Extension::word, "none"))
            .map(ImmutableSet::copyOf),
        fields
            .listOrNone(
                "shifts",
                word("shift", ImmutableList.copyOf(ShiftKind.values()), ShiftKind::word, "none"))
            .map(ImmutableSet::copyOf));
  }

  /**
   * Writes a player as text that {@link #parse} reads back.
   *
   * @throws FingeringException if a player file cannot say it: nothing is known about the player,
   *     no position or no finger pattern is learned, the hand is one that has no word, or a
   *     component does not suit the instrument
   */
  public static String text(Player player) {
    return readBack(player, String.join("", PlayerText.keys(player).values().asList()));
  }

  /**
   * Changes the text of a player file. What does not change stays as it was written, with its
   * remarks.
   *
   * @param before the text before the change
   * @throws UserFileException if that text is not a player file
   * @throws FingeringException as {@link #text} does
   */
  public static FileUpdate update(String before, Player player) {
    FileUpdate update = FileUpdate.of(before, player, text -> parse(FILE, text), PlayerText::keys);
    readBack(player, update.text());
    return update;
  }

  private static String readBack(Player player, String text) {
    if (!parse(FILE, text).equals(player)) {
      throw new FingeringException("a player file cannot say everything about this player");
    }
    return text;
  }

  private static String checked(String size, Optional<Instrument> instrument) {
    instrument.ifPresent(played -> Instruments.standard().size(played, size));
    return size;
  }

  /** With hyphens for dashes, and single spaces. */
  private static String tidy(String word) {
    return SPACES.matcher(word.strip().replace('–', '-')).replaceAll(" ");
  }

  /** A single position, or all positions of a range. */
  private static ImmutableList<Position> range(String word) {
    ImmutableList<Position> ends =
        RANGE.splitToStream(word).map(Position::parse).collect(ImmutableList.toImmutableList());
    Position from = ends.get(0);
    Position to = ends.get(ends.size() - 1);
    if (ends.size() > 2 || from.compareTo(to) > 0) {
      throw new FingeringException(
          "'" + word + "' is not a range of positions; write the lower one first, such as 1-3");
    }
    return Position.range(from, to);
  }

  private static Function<String, FingerPattern> patterns(Optional<Instrument> instrument) {
    return word(
        "finger pattern" + instrument.map(one -> " of the " + one.nameInSentence()).orElse(""),
        Arrays.stream(FingerPattern.values())
            .filter(pattern -> instrument.map(one -> pattern.fits(one.kind())).orElse(true))
            .collect(ImmutableList.toImmutableList()),
        FingerPattern::word);
  }

  /**
   * Reads one of several words. Case does not matter.
   *
   * @param more what else may be written in place of the list, for the message
   */
  private static <T> Function<String, T> word(
      String what, ImmutableList<T> known, Function<T, String> word, String... more) {
    return text ->
        known.stream()
            .filter(one -> word.apply(one).equalsIgnoreCase(tidy(text)))
            .findFirst()
            .orElseThrow(
                () ->
                    new FingeringException(
                        "'%s' is not %s; %s"
                            .formatted(
                                tidy(text),
                                article(what),
                                NearWord.advice(
                                    tidy(text),
                                    Stream.concat(known.stream().map(word), Stream.of(more))
                                        .toList()))));
  }

  private static String article(String what) {
    return ("aeiou".indexOf(what.charAt(0)) < 0 ? "a " : "an ") + what;
  }
}
