package fingering.player;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads a player file, and complains of it by line. */
final class PlayerFile {
  private static final Pattern LINE = Pattern.compile("([^=#]*[^=#\\s])\\s*=\\s*([^#]*)(#.*)?");
  private static final ImmutableList<String> HEADINGS =
      ImmutableList.of(
          "preset", "instrument", "size", "hand", "positions", "patterns", "extensions", "shifts");
  private static final String NONE = "none";
  private static final Splitter COMMA = Splitter.on(',').trimResults();
  private static final Splitter RANGE = Splitter.on('-').trimResults();

  /** What stands behind a heading. */
  private record Entry(int line, String value) {}

  private final String name;
  private final Map<String, Entry> entries = new LinkedHashMap<>();

  PlayerFile(String name) {
    this.name = name;
  }

  Player read(String text) {
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      if (!line.isBlank() && !line.strip().startsWith("#")) {
        enter(number, line.strip());
      }
    }
    Optional<Instrument> instrument =
        entry("instrument").map(e -> told(e, () -> Instruments.standard().named(e.value())));
    entry("size").ifPresent(e -> instrument.ifPresent(i -> told(e, () -> size(i, e.value()))));
    return new Player(
        entry("preset").map(e -> told(e, () -> Weights.presetName(e.value()))),
        instrument,
        entry("size").map(Entry::value),
        entry("hand").map(e -> told(e, () -> LeftHand.parse(e.value()))),
        entry("positions").map(this::positions),
        entry("patterns").map(e -> patterns(e, instrument)),
        entry("extensions")
            .map(
                e -> words(e, "extension", true, Arrays.stream(Extension.values()), x -> x.word())),
        entry("shifts")
            .map(e -> words(e, "shift", true, Arrays.stream(ShiftKind.values()), x -> x.word())));
  }

  private Optional<Entry> entry(String heading) {
    return Optional.ofNullable(entries.get(heading));
  }

  private void enter(int number, String line) {
    Matcher matcher = LINE.matcher(line);
    if (!matcher.matches()) {
      throw bad(number, "write a heading and what belongs to it, such as 'positions = 1, 3'");
    }
    String heading = matcher.group(1).toLowerCase(Locale.ROOT);
    String value = matcher.group(2).strip().replace('–', '-').replaceAll("\\s+", " ");
    if (!HEADINGS.contains(heading)) {
      throw bad(
          number, "there is no heading '" + matcher.group(1) + "'; choose from " + list(HEADINGS));
    }
    if (entries.containsKey(heading)) {
      throw bad(number, "the heading '" + heading + "' stands twice; put both into one line");
    }
    if (value.isEmpty()) {
      throw bad(number, "nothing stands behind '" + heading + "'; fill it in, or take it out");
    }
    entries.put(heading, new Entry(number, value));
  }

  private static String size(Instrument instrument, String value) {
    Instruments.standard().size(instrument, value);
    return value;
  }

  private ImmutableSet<Position> positions(Entry entry) {
    return COMMA
        .splitToStream(entry.value())
        .flatMap(word -> told(entry, () -> range(word)))
        .collect(ImmutableSet.toImmutableSet());
  }

  /** One position, or all from one to another, those in between too. */
  private static Stream<Position> range(String word) {
    ImmutableList<Position> ends =
        RANGE.splitToStream(word).map(Position::parse).collect(ImmutableList.toImmutableList());
    Position from = ends.get(0);
    Position to = ends.get(ends.size() - 1);
    if (ends.size() > 2 || from.compareTo(to) > 0) {
      throw new FingeringException(
          "'" + word + "' is no range of positions; write the lower one first, such as 1-3");
    }
    return Position.range(from, to).stream();
  }

  private ImmutableSet<FingerPattern> patterns(Entry entry, Optional<Instrument> instrument) {
    return words(
        entry,
        "finger pattern" + instrument.map(i -> " of the " + i.spoken()).orElse(""),
        false,
        Arrays.stream(FingerPattern.values())
            .filter(pattern -> instrument.map(i -> pattern.fits(i.kind())).orElse(true)),
        FingerPattern::word);
  }

  private <T> ImmutableSet<T> words(
      Entry entry, String what, boolean noneToo, Stream<T> allowed, Function<T, String> word) {
    if (noneToo && entry.value().equalsIgnoreCase(NONE)) {
      return ImmutableSet.of();
    }
    ImmutableList<T> known = allowed.collect(ImmutableList.toImmutableList());
    return COMMA
        .splitToStream(entry.value())
        .map(
            given ->
                known.stream()
                    .filter(one -> word.apply(one).equalsIgnoreCase(given))
                    .findFirst()
                    .orElseThrow(
                        () ->
                            bad(
                                entry.line(),
                                "'%s' is no %s; choose from %s%s"
                                    .formatted(
                                        given,
                                        what,
                                        list(known.stream().map(word).toList()),
                                        noneToo ? ", or write none" : ""))))
        .collect(ImmutableSet.toImmutableSet());
  }

  private static String list(Iterable<String> words) {
    return String.join(", ", words);
  }

  /** What reading gives; what it complains of, with the line. */
  private <T> T told(Entry entry, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (FingeringException e) {
      throw bad(entry.line(), String.valueOf(e.getMessage()));
    }
  }

  private FingeringException bad(int line, String why) {
    return new FingeringException(name + ", line " + line + ": " + why);
  }
}
