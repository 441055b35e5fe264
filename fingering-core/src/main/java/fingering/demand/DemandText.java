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
import fingering.tables.Position;
import fingering.tables.StringNames;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads demands as they are typed, on the command line and in files of briefs. A demand that holds
 * for some measures alone ends in {@code @} and the measures: {@code 1,half@9-16}.
 */
public final class DemandText {
  private static final Splitter LIST = Splitter.on(',').trimResults().omitEmptyStrings();
  private static final Pattern COUNTED = Pattern.compile("(.+?)\\s*=\\s*(\\d{1,4})");
  private static final Pattern TAKEN =
      Pattern.compile("([^=]+)=([^/@]*)(?:/\\s*([0-4Tt]))?\\s*(?:@(.+))?");

  private final Instrument instrument;
  private final Function<String, Demand> plans;

  private DemandText(Instrument instrument, Function<String, Demand> plans) {
    this.instrument = instrument;
    this.plans = plans;
  }

  /** Reads the names of strings as that instrument is tuned; knows no earlier plans. */
  public static DemandText on(Instrument instrument) {
    return new DemandText(
        instrument,
        text -> {
          throw new FingeringException(
              "the plan '" + text + "' cannot be kept, since no files are read here");
        });
  }

  /**
   * The same with earlier plans.
   *
   * @param earlier finds the plan that a text names, and what of it is to be kept: {@code
   *     plan.json@9-16}
   */
  public DemandText keeping(Function<String, Demand> earlier) {
    return new DemandText(instrument, earlier);
  }

  /**
   * Positions allowed: {@code 1,half}, {@code 1,2,3@9-16}.
   *
   * @throws FingeringException if the text is no demand of the kind; so are all below
   */
  public Demand allow(String text) {
    return within(text, (what, span) -> new AllowPositions(all(what, Position::parse), span));
  }

  /**
   * Positions in a list: {@code 1,half}.
   *
   * @throws FingeringException if the text is none
   */
  public static ImmutableSet<Position> positions(String text) {
    return all(text, Position::parse);
  }

  /** Strings allowed: {@code III,IV@9-16}, {@code C,G}. */
  public Demand strings(String text) {
    return within(text, (what, span) -> new AllowStrings(all(what, this::string), span));
  }

  /** What to do without: {@code open-strings}, {@code fourth-finger,extensions@9-16}. */
  public ImmutableList<Demand> avoid(String text) {
    ImmutableList.Builder<Demand> demands = ImmutableList.builder();
    String what = what(text);
    for (Avoid.What each : all(what, Avoid.What::parse)) {
      demands.add(new Avoid(each, span(text)));
    }
    return demands.build();
  }

  /**
   * Where the hand stays: {@code 3@6-11}.
   *
   * @throws FingeringException if the text says no position, or no measures
   */
  public Demand stay(String text) {
    if (text.indexOf('@') < 0) {
      throw new FingeringException(
          "'" + text + "' names no measures to stay in; write position and measures, 3@6-11");
    }
    return within(text, (what, span) -> new StayIn(Position.parse(what), span));
  }

  /**
   * How a note is taken: {@code 12.3=III/4} on a string by a finger, {@code 12.3=III}, {@code
   * 12.3=/4}, {@code 12.3=III/4@3} in a position.
   *
   * @throws FingeringException if the text says no note, or not how it is taken
   */
  public Demand fix(String text) {
    Matcher matcher = TAKEN.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'"
              + text
              + "' does not say how to take a note; write measure.beat=string/finger, 12.3=III/4, or"
              + " 12.3=/4, 12.3=III, 12.3=III/4@3 with the position");
    }
    String string = matcher.group(2).strip();
    return new FixNote(
        MeasureBeat.parse(matcher.group(1)),
        string.isEmpty() ? OptionalInt.empty() : OptionalInt.of(string(string)),
        Optional.ofNullable(matcher.group(3)).map(DemandText::finger),
        Optional.ofNullable(matcher.group(4)).map(Position::parse));
  }

  /** Notes as in an earlier plan: {@code plan.json}, {@code plan.json@9-16}. */
  public Demand keepPlan(String text) {
    return plans.apply(text);
  }

  /** A position to show, in so many stopped notes: {@code 3=8}. */
  public Demand show(String text) {
    return counted(
        text,
        "3=8, eight notes in 3rd",
        (what, many) -> new ShowPosition(Position.parse(what), many));
  }

  /** A stay to show, of so many whole measures: {@code 3=2}. */
  public Demand showStay(String text) {
    return counted(
        text, "3=2, two measures in 3rd", (what, many) -> new ShowStay(Position.parse(what), many));
  }

  /**
   * Shifts to show: {@code up=2}, {@code first-finger=2}, {@code up first-finger=1}; any at all are
   * {@code any=3}.
   */
  public Demand showShift(String text) {
    return counted(text, "up first-finger=2, two such shifts", DemandText::shift);
  }

  private static Demand shift(String what, int times) {
    Optional<ShowShift.Direction> direction = Optional.empty();
    Optional<ShiftKind> kind = Optional.empty();
    for (String word : Splitter.on(' ').omitEmptyStrings().split(Ascii.toLowerCase(what))) {
      switch (word) {
        case "up" -> direction = Optional.of(ShowShift.Direction.UP);
        case "down" -> direction = Optional.of(ShowShift.Direction.DOWN);
        case "any" -> kind = Optional.empty();
        default -> kind = Optional.of(ShiftKind.named(word));
      }
    }
    return new ShowShift(direction, kind, times);
  }

  /** Something to show in one note at least: {@code fourth-finger}. */
  public Demand showTechnique(String text) {
    return new ShowTechnique(Avoid.What.parse(text));
  }

  /** The keys that {@link #read} knows, in the order in which they are told. */
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
   * The demands of a key and its value, as in a file of briefs: {@code show} and {@code 3=8}.
   *
   * @throws FingeringException if there is no such key, or the value does not fit it
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
              "'" + key + "' is nothing that can be demanded; choose " + String.join(", ", KEYS));
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

  private interface Within {
    Demand of(String what, MeasureSpan span);
  }

  private static Demand within(String text, Within demand) {
    return demand.of(what(text), span(text));
  }

  private static String what(String text) {
    int at = text.lastIndexOf('@');
    return (at < 0 ? text : text.substring(0, at)).strip();
  }

  private static MeasureSpan span(String text) {
    int at = text.lastIndexOf('@');
    return at < 0 ? MeasureSpan.WHOLE : MeasureSpan.parse(text.substring(at + 1));
  }

  private interface Counted {
    Demand of(String what, int many);
  }

  private static Demand counted(String text, String example, Counted demand) {
    Matcher matcher = COUNTED.matcher(text.strip());
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' does not say what to show how often; write " + example);
    }
    return demand.of(matcher.group(1), Integer.parseInt(matcher.group(2)));
  }

  private static <T> ImmutableSet<T> all(String list, Function<String, T> each) {
    return LIST.splitToStream(list).map(each).collect(ImmutableSet.toImmutableSet());
  }
}
