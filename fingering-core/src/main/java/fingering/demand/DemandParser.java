package fingering.demand;

import com.google.common.base.Ascii;
import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Finger;
import fingering.music.MeasureBeat;
import fingering.player.ShiftKind;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.NearWord;
import fingering.tables.Position;
import fingering.tables.StringNames;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads demands as users type them, on the command line and in brief files. A demand for only some
 * measures ends in {@code @} and the measures: {@code 1,half@9-16}. Immutable. Every method that
 * reads a text throws {@link FingeringException} if the text is not a demand of its kind.
 */
public final class DemandParser {
  private static final Splitter LIST = Splitter.on(',').trimResults().omitEmptyStrings();
  private static final Pattern WITH_AMOUNT = Pattern.compile("(.+?)\\s*=\\s*(\\d{1,4})");
  private static final Pattern FIXED_NOTE =
      Pattern.compile("([^=]+)=([^/@]*)(?:/\\s*([0-4Tt]))?\\s*(?:@(.+))?");

  private final Instrument instrument;
  private final Function<String, Demand> earlierPlans;

  private DemandParser(Instrument instrument, Function<String, Demand> earlierPlans) {
    this.instrument = instrument;
    this.earlierPlans = earlierPlans;
  }

  /** A parser that reads the names of strings for an instrument and refuses earlier plans. */
  public static DemandParser of(Instrument instrument) {
    return new DemandParser(
        instrument,
        text -> {
          throw new FingeringException(
              "the plan '" + text + "' cannot be kept, because no files are read here");
        });
  }

  /**
   * A copy that reads earlier plans.
   *
   * @param newEarlierPlans returns the demand to keep the plan, or the part of it, that a text
   *     names: {@code plan.json@9-16}
   */
  public DemandParser withEarlierPlans(Function<String, Demand> newEarlierPlans) {
    return new DemandParser(instrument, newEarlierPlans);
  }

  /** Reads allowed positions: {@code 1,half}, {@code 1,2,3@9-16}. */
  public Demand allow(String text) {
    return withSpan(text, (value, span) -> new AllowPositions(list(value, Position::parse), span));
  }

  /** Reads a list of positions: {@code 1,half}. */
  public static ImmutableSet<Position> positions(String text) {
    return list(text, Position::parse);
  }

  /** Reads allowed strings: {@code III,IV@9-16}, {@code C,G}. */
  public Demand strings(String text) {
    return withSpan(text, (value, span) -> new AllowStrings(list(value, this::string), span));
  }

  /** Reads techniques to avoid: {@code open-strings}, {@code fourth-finger,extensions@9-16}. */
  public ImmutableList<Demand> avoid(String text) {
    MeasureSpan span = span(text);
    return list(value(text), Technique::parse).stream()
        .map(technique -> new Avoid(technique, span))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Reads a position in which the hand stays, and the measures: {@code 3@6-11}.
   *
   * @throws FingeringException if the text is not a position with measures
   */
  public Demand stay(String text) {
    if (text.indexOf('@') < 0) {
      throw new FingeringException(
          "'"
              + text
              + "' does not say in which measures to stay; write the position and the measures, for"
              + " example 3@6-11");
    }
    return withSpan(text, (value, span) -> new StayIn(Position.parse(value), span));
  }

  /**
   * Reads the fingering of one note: {@code 12.3=III/4} with string and finger, {@code 12.3=III},
   * {@code 12.3=/4}, or {@code 12.3=III/4@3} with the position.
   *
   * @throws FingeringException if the text is not a note with its fingering
   */
  public Demand fix(String text) {
    Matcher matcher = FIXED_NOTE.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'"
              + text
              + "' does not say how to play a note; write measure.beat=string/finger, 12.3=III/4, or"
              + " 12.3=/4, 12.3=III, 12.3=III/4@3 with the position");
    }
    String string = matcher.group(2).strip();
    return new FixNote(
        MeasureBeat.parse(matcher.group(1)),
        string.isEmpty() ? OptionalInt.empty() : OptionalInt.of(string(string)),
        Optional.ofNullable(matcher.group(3)).map(DemandParser::finger),
        Optional.ofNullable(matcher.group(4)).map(Position::parse));
  }

  /** Reads an earlier plan to keep: {@code plan.json}, {@code plan.json@9-16}. */
  public Demand keepPlan(String text) {
    return earlierPlans.apply(text);
  }

  /** Reads a position to show and a number of stopped notes: {@code 3=8}. */
  public Demand show(String text) {
    return withAmount(
        text,
        "3=8 for eight notes in 3rd position",
        (value, notes) -> new ShowPosition(Position.parse(value), notes));
  }

  /** Reads the position of a stay to show and a number of whole measures: {@code 3=2}. */
  public Demand showStay(String text) {
    return withAmount(
        text,
        "3=2 for two measures in 3rd position",
        (value, measures) -> new ShowStay(Position.parse(value), measures));
  }

  /**
   * Reads shifts to show and their number: {@code up=2}, {@code first-finger=2}, {@code up
   * first-finger=1}, or {@code any=3} for any shifts.
   */
  public Demand showShift(String text) {
    return withAmount(
        text, "up first-finger=2 for two upward shifts by the first finger", DemandParser::shift);
  }

  private static Demand shift(String value, int times) {
    Optional<ShowShift.Direction> direction = Optional.empty();
    Optional<ShiftKind> kind = Optional.empty();
    for (String word : Splitter.on(' ').omitEmptyStrings().split(Ascii.toLowerCase(value))) {
      switch (word) {
        case "up" -> direction = Optional.of(ShowShift.Direction.UP);
        case "down" -> direction = Optional.of(ShowShift.Direction.DOWN);
        case "any" -> kind = Optional.empty();
        default -> kind = Optional.of(ShiftKind.named(word));
      }
    }
    return new ShowShift(direction, kind, times);
  }

  /** Reads a technique to show on at least one note: {@code fourth-finger}. */
  public Demand showTechnique(String text) {
    return new ShowTechnique(Technique.parse(text));
  }

  /** The keys that {@link #read} accepts, in the order in which messages list them. */
  public static final ImmutableList<String> KEYS =
      ImmutableList.of(
          "allow",
          "strings",
          "avoid",
          "stay",
          "fix",
          "keep-plan",
          "show",
          "show-stay",
          "show-shift",
          "show-technique");

  /**
   * Reads a key and its value from a brief file: {@code show} and {@code 3=8}.
   *
   * @throws FingeringException if the key is unknown or the value does not fit it
   */
  public ImmutableList<Demand> read(String key, String value) {
    return switch (key) {
      case "allow" -> ImmutableList.of(allow(value));
      case "strings" -> ImmutableList.of(strings(value));
      case "avoid" -> avoid(value);
      case "stay" -> ImmutableList.of(stay(value));
      case "fix" -> ImmutableList.of(fix(value));
      case "keep-plan" -> ImmutableList.of(keepPlan(value));
      case "show" -> ImmutableList.of(show(value));
      case "show-stay" -> ImmutableList.of(showStay(value));
      case "show-shift" -> ImmutableList.of(showShift(value));
      case "show-technique" -> ImmutableList.of(showTechnique(value));
      default ->
          throw new FingeringException(
              "'%s' is not a demand; %s".formatted(key, NearWord.advice(key, KEYS)));
    };
  }

  private int string(String text) {
    return StringNames.of(instrument).find(text).number();
  }

  private static Finger finger(String symbol) {
    return Arrays.stream(Finger.values())
        .filter(finger -> finger.symbol().equalsIgnoreCase(symbol))
        .findFirst()
        .orElseThrow();
  }

  private interface SpanDemand {
    Demand of(String value, MeasureSpan span);
  }

  private static Demand withSpan(String text, SpanDemand demand) {
    return demand.of(value(text), span(text));
  }

  /** The text without its measures. */
  private static String value(String text) {
    int at = text.lastIndexOf('@');
    return (at < 0 ? text : text.substring(0, at)).strip();
  }

  /** The measures at the end of a text; the whole passage if it names none. */
  private static MeasureSpan span(String text) {
    int at = text.lastIndexOf('@');
    return at < 0 ? MeasureSpan.WHOLE : MeasureSpan.parse(text.substring(at + 1));
  }

  private interface AmountDemand {
    Demand of(String value, int amount);
  }

  private static Demand withAmount(String text, String example, AmountDemand demand) {
    Matcher matcher = WITH_AMOUNT.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' does not say what to show and how much of it; write " + example);
    }
    return demand.of(matcher.group(1), Integer.parseInt(matcher.group(2)));
  }

  private static <T> ImmutableSet<T> list(String text, Function<String, T> element) {
    return LIST.splitToStream(text).map(element).collect(ImmutableSet.toImmutableSet());
  }
}
