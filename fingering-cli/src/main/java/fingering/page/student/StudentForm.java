package fingering.page.student;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.page.live.StudentView;
import fingering.player.Extension;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.player.ShiftKind;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What is typed and ticked in the form of a student. Immutable. */
public final class StudentForm {
  /** The fields of the form, as they are sent. */
  static final String NAME = "name";

  static final String INSTRUMENT = "instrument";
  static final String LEVEL = "level";
  static final String SIZE = "size";
  static final String HAND = "hand";
  static final String REACH = "reach";

  /** The id of the open lesson for which the student is made; not sent if there is none. */
  public static final String LESSON = "lesson";

  /** Level and instrument for which the usual skills were ticked. */
  static final String SHAPE = "shape";

  static final String POSITIONS = "positions";
  static final String PATTERNS = "patterns";
  static final String EXTENSIONS = "extensions";
  static final String SHIFTS = "shifts";

  /** The tick for 'none yet'. */
  static final String NONE = "NONE";

  private static final String TICKED = "on";
  private static final String BEGINNER = "beginner";

  private final ImmutableMap<String, String> fields;
  private final Optional<Player> before;

  private StudentForm(Map<String, String> fields, Optional<Player> before) {
    this.fields = ImmutableMap.copyOf(fields);
    this.before = before;
  }

  /**
   * What a form says.
   *
   * @param player the player
   * @param errors a sentence for each field that cannot be used, by its name
   */
  public record Read(Player player, ImmutableMap<String, String> errors) {}

  /** The form of a new student, a beginner. */
  public static StudentForm fresh() {
    return new StudentForm(Map.of(LEVEL, BEGINNER), Optional.empty())
        .with(UsualSkills.of(BEGINNER, Optional.empty()));
  }

  /**
   * The form of a new student who is to play a lesson.
   *
   * @param lesson the id of the lesson
   * @param instrument the instrument of its part
   */
  public static StudentForm fresh(String lesson, Instrument instrument) {
    Map<String, String> fields =
        Map.of(LEVEL, BEGINNER, LESSON, lesson, INSTRUMENT, instrument.id());
    return new StudentForm(fields, Optional.empty())
        .with(UsualSkills.of(BEGINNER, Optional.of(instrument.kind())));
  }

  /** The form of a student who has a player file. */
  public static StudentForm of(Player player) {
    Map<String, String> fields = new HashMap<>();
    player.instrument().ifPresent(one -> fields.put(INSTRUMENT, one.id()));
    player.preset().ifPresent(level -> fields.put(LEVEL, level));
    player.size().ifPresent(size -> fields.put(SIZE, size));
    player
        .hand()
        .ifPresent(
            hand -> {
              if (hand.millimetres().isPresent()) {
                fields.put(REACH, Double.toString(hand.millimetres().getAsDouble()));
              } else {
                fields.put(HAND, hand(hand));
              }
            });
    return new StudentForm(fields, Optional.of(player)).with(player);
  }

  private static String hand(LeftHand hand) {
    return hand.equals(LeftHand.SMALL) ? "small" : hand.equals(LeftHand.LARGE) ? "large" : "medium";
  }

  /**
   * A form as it was sent.
   *
   * @param before the player in the file; empty for a new student
   */
  public static StudentForm typed(Map<String, String> fields, Optional<Player> before) {
    return new StudentForm(fields, before);
  }

  /**
   * The form after another instrument or level is chosen: the usual skills of a new student are
   * ticked, unless the teacher has ticked others.
   */
  public StudentForm shaped() {
    Player usual = UsualSkills.of(value(LEVEL), kind());
    String[] shape = value(SHAPE).split("/", -1);
    Player earlier =
        UsualSkills.of(shape[0], instrument(shape[shape.length - 1]).map(Instrument::kind));
    boolean untouched = before.isEmpty() && ticks().equals(ticks(earlier));
    return untouched ? with(usual) : this;
  }

  /** The name that is typed. */
  public String name() {
    return value(NAME);
  }

  private String value(String field) {
    return fields.getOrDefault(field, "").strip();
  }

  private static Optional<Instrument> instrument(String id) {
    return Instruments.standard().all().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  private Optional<Instrument> instrument() {
    return instrument(value(INSTRUMENT));
  }

  private Optional<HandKind> kind() {
    return instrument().map(Instrument::kind);
  }

  private LearnedPositions positions() {
    return new LearnedPositions(
        kind(), before.flatMap(Player::positions).orElse(ImmutableSet.of()));
  }

  /** This form with the skills of a player ticked. */
  private StudentForm with(Player player) {
    Map<String, String> all = new HashMap<>(fields);
    all.keySet().removeAll(ticks());
    ticks(player).forEach(tick -> all.put(tick, TICKED));
    all.put(SHAPE, value(LEVEL) + "/" + value(INSTRUMENT));
    return new StudentForm(all, before);
  }

  private ImmutableSet<String> ticks() {
    return fields.keySet().stream()
        .filter(field -> field.contains("-"))
        .collect(ImmutableSet.toImmutableSet());
  }

  private static ImmutableSet<String> ticks(Player player) {
    ImmutableSet.Builder<String> ticks = ImmutableSet.builder();
    player.positions().ifPresent(all -> all.forEach(one -> ticks.add(tick(one))));
    player.patterns().ifPresent(all -> all.forEach(one -> ticks.add(tick(PATTERNS, one))));
    player.extensions().ifPresent(all -> all.forEach(one -> ticks.add(tick(EXTENSIONS, one))));
    player.shifts().ifPresent(all -> all.forEach(one -> ticks.add(tick(SHIFTS, one))));
    if (player.extensions().filter(ImmutableSet::isEmpty).isPresent()) {
      ticks.add(EXTENSIONS + "-" + NONE);
    }
    if (player.shifts().filter(ImmutableSet::isEmpty).isPresent()) {
      ticks.add(SHIFTS + "-" + NONE);
    }
    return ticks.build();
  }

  static String tick(Position position) {
    return POSITIONS + "-" + position.rank();
  }

  static String tick(String group, Enum<?> skill) {
    return group + "-" + skill.name();
  }

  boolean ticked(String tick) {
    return fields.containsKey(tick);
  }

  /** Reads the form, whatever is wrong with some of its fields. */
  public Read read() {
    Map<String, String> errors = new HashMap<>();
    if (before.isEmpty() && instrument().isEmpty()) {
      errors.put(INSTRUMENT, text("student.no-instrument"));
    }
    Optional<String> size = given(SIZE);
    size.ifPresent(
        typed ->
            instrument().ifPresent(one -> checked(SIZE, typed, name -> sized(one, name), errors)));
    Optional<LeftHand> hand =
        given(REACH)
            .map(typed -> checked(REACH, typed, LeftHand::parse, errors))
            .orElseGet(
                () -> given(HAND).flatMap(word -> checked(HAND, word, LeftHand::parse, errors)));
    for (String group : ImmutableList.of(EXTENSIONS, SHIFTS)) {
      boolean several = ticks().stream().filter(tick -> tick.startsWith(group + "-")).count() > 1;
      if (ticked(group + "-" + NONE) && several) {
        errors.put(group, text("student.none-and-some"));
      }
    }
    Player player =
        new Player(
            given(LEVEL).flatMap(typed -> checked(LEVEL, typed, Weights::presetName, errors)),
            instrument(),
            size,
            hand,
            some(positions().with(ticked(positions().shown().asList(), StudentForm::tick))),
            some(ticked(patterns(), one -> tick(PATTERNS, one))),
            someOrNone(EXTENSIONS, ImmutableList.copyOf(Extension.values())),
            someOrNone(SHIFTS, ImmutableList.copyOf(ShiftKind.values())));
    return new Read(player, ImmutableMap.copyOf(errors));
  }

  private Optional<String> given(String field) {
    return Optional.of(value(field)).filter(text -> !text.isEmpty());
  }

  private static String sized(Instrument instrument, String size) {
    Instruments.standard().size(instrument, size);
    return size;
  }

  private static <T> Optional<T> checked(
      String field, String typed, Function<String, T> reading, Map<String, String> errors) {
    try {
      return Optional.of(reading.apply(typed));
    } catch (FingeringException e) {
      String message = String.valueOf(e.getMessage());
      errors.put(
          field, message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1) + ".");
      return Optional.empty();
    }
  }

  /** The finger patterns of the instrument; all of them if it is not known. */
  ImmutableList<FingerPattern> patterns() {
    return Arrays.stream(FingerPattern.values())
        .filter(pattern -> kind().map(pattern::fits).orElse(true))
        .collect(ImmutableList.toImmutableList());
  }

  private <T> ImmutableSet<T> ticked(ImmutableList<T> all, Function<T, String> tick) {
    return all.stream()
        .filter(one -> ticked(tick.apply(one)))
        .collect(ImmutableSet.toImmutableSet());
  }

  private static <T> Optional<ImmutableSet<T>> some(ImmutableSet<T> ticked) {
    return Optional.of(ticked).filter(all -> !all.isEmpty());
  }

  private <T extends Enum<T>> Optional<ImmutableSet<T>> someOrNone(
      String group, ImmutableList<T> all) {
    return ticked(group + "-" + NONE)
        ? Optional.of(ImmutableSet.of())
        : some(ticked(all, one -> tick(group, one)));
  }

  /**
   * What the form shows.
   *
   * @param title the title of the page
   * @param address the address that it is sent to
   * @param seen a mark of the text that it was filled from; empty for a new student
   * @param errors a sentence for each field that cannot be used, by its name
   * @param said what was saved, a sentence each
   */
  public StudentView view(
      String title,
      String address,
      String seen,
      ImmutableMap<String, String> errors,
      ImmutableList<String> said) {
    StudentFormParts parts = new StudentFormParts(this, fields, instrument(), positions().shown());
    return new StudentView(
        title, address, seen, fields, errors, parts.sizes(), parts.choices(), parts.groups(), said);
  }

  /** Whether the student is new. */
  boolean isFresh() {
    return before.isEmpty();
  }
}
