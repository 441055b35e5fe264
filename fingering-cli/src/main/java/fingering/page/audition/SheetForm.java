package fingering.page.audition;

import static fingering.page.view.PageText.text;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.demand.DemandParser;
import fingering.demand.Technique;
import fingering.page.live.SheetView;
import fingering.page.live.StudentView.Choice;
import fingering.page.live.StudentView.Tick;
import fingering.sheet.AuditionSheetFile;
import fingering.sheet.SheetContent;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The form of an audition sheet: what it shows, and what it changes.
 *
 * @param sheet the sheet before a change
 */
public record SheetForm(SheetContent sheet) {
  private static final String TITLE = "title";
  private static final String INSTRUMENT = "instrument";
  private static final String STUDENT = "student";
  private static final String COUNTED = "counted";
  private static final String SHOWN_IN = "shown-in";
  private static final String POSITIONS = "positions";
  private static final String NOTES = "notes";
  private static final String ASK = "ask";
  private static final String AMOUNT = "amount";

  private static final String STAY = "show-stay";
  private static final String SHIFT = "show-shift";
  private static final String TECHNIQUE = "show-technique";

  private static final ImmutableList<String> SKILLS = ImmutableList.of(STAY, SHIFT, TECHNIQUE);
  private static final ImmutableList<String> SHIFTS = ImmutableList.of("up", "down", "any");
  private static final int HIGHEST = 7;
  private static final Splitter LIST = Splitter.on(',').trimResults().omitEmptyStrings();

  /** A sheet with nothing in it yet. */
  public static SheetContent fresh(String title, String instrument) {
    return new SheetContent(
        ImmutableListMultimap.of(TITLE, title, INSTRUMENT, instrument), ImmutableList.of());
  }

  /** The instrument of a sheet. */
  public Instrument instrument() {
    return Instruments.standard().named(sheet.value(INSTRUMENT));
  }

  /** The sheet with what is typed and ticked in the upper part of the form. */
  public SheetContent withSettings(Map<String, String> fields) {
    SheetContent next =
        sheet
            .with(TITLE, given(fields, TITLE))
            .with(INSTRUMENT, given(fields, INSTRUMENT))
            .with(STUDENT, given(fields, STUDENT))
            .with(COUNTED, given(fields, COUNTED))
            .with(SHOWN_IN, given(fields, SHOWN_IN));
    if (next.value(TITLE).isEmpty()) {
      throw new FingeringException(text("panel.no-title"));
    }
    return next.with(POSITIONS, positions(fields));
  }

  private ImmutableList<String> positions(Map<String, String> fields) {
    Map<Position, String> before = amounts();
    String notes = fields.getOrDefault(NOTES, "").strip();
    if (!notes.matches("|[1-9]\\d{0,2}")) {
      throw new FingeringException(text("panel.notes-wrong", notes));
    }
    String usual = Integer.toString(AuditionSheetFile.USUAL_NOTES);
    return shown().stream()
        .filter(position -> fields.containsKey(tick(position)))
        .map(
            position -> {
              String amount = notes.isEmpty() ? before.getOrDefault(position, usual) : notes;
              return amount.equals(usual) ? position.toString() : position + "=" + amount;
            })
        .collect(ImmutableList.toImmutableList());
  }

  /** The positions to show, with the number of notes. */
  private Map<Position, String> amounts() {
    Map<Position, String> amounts = new LinkedHashMap<>();
    for (String value : sheet.keys().get(POSITIONS)) {
      for (String one : LIST.split(value)) {
        int equals = one.indexOf('=');
        amounts.put(
            Position.parse(equals < 0 ? one : one.substring(0, equals)),
            equals < 0
                ? Integer.toString(AuditionSheetFile.USUAL_NOTES)
                : one.substring(equals + 1).strip());
      }
    }
    return amounts;
  }

  private List<Position> shown() {
    return Stream.concat(
            IntStream.rangeClosed(1, HIGHEST).mapToObj(Position::of), amounts().keySet().stream())
        .distinct()
        .sorted()
        .toList();
  }

  private static String tick(Position position) {
    return POSITIONS + "-" + position.rank();
  }

  /** The sheet that asks for one more skill. */
  public SheetContent asking(Map<String, String> fields) {
    String[] asked = fields.getOrDefault(ASK, "").split(":", 2);
    if (asked.length < 2 || !SKILLS.contains(asked[0])) {
      throw new FingeringException(text("panel.choose"));
    }
    String amount = fields.getOrDefault(AMOUNT, "").strip();
    String value =
        asked[0].equals(TECHNIQUE) ? asked[1] : asked[1] + "=" + (amount.isEmpty() ? "1" : amount);
    // Refuses a number that is none.
    DemandParser.of(instrument()).read(asked[0], value);
    String before = asked[1] + "=";
    return sheet.with(
        asked[0],
        Stream.concat(
                sheet.keys().get(asked[0]).stream()
                    .filter(other -> !other.startsWith(before) && !other.equals(value)),
                Stream.of(value))
            .collect(ImmutableList.toImmutableList()));
  }

  /** The sheet that no longer asks for a skill. */
  public SheetContent dropping(Map<String, String> fields) {
    String key = fields.getOrDefault("key", "");
    String value = fields.getOrDefault("value", "");
    return SKILLS.contains(key)
        ? sheet.with(
            key,
            sheet.keys().get(key).stream()
                .filter(other -> !other.equals(value))
                .collect(ImmutableList.toImmutableList()))
        : sheet;
  }

  private static ImmutableList<String> given(Map<String, String> fields, String name) {
    String value = fields.getOrDefault(name, "").strip();
    return value.isEmpty() ? ImmutableList.of() : ImmutableList.of(value);
  }

  /** The menus of the upper part. */
  public ImmutableMap<String, ImmutableList<Choice>> menus(ImmutableList<Choice> students) {
    return ImmutableMap.of(
        INSTRUMENT,
        ScaleMenus.instruments(instrument().id()),
        STUDENT,
        students,
        COUNTED,
        ScaleMenus.menu(
            ImmutableList.of("", "in-one-piece"),
            value -> value,
            value -> value.isEmpty() ? text("panel.together") : text("panel.in-one"),
            sheet.value(COUNTED)),
        SHOWN_IN,
        ScaleMenus.menu(
            ImmutableList.of("", "excerpts"),
            value -> value,
            value -> value.isEmpty() ? text("panel.in-all") : text("panel.in-excerpts"),
            sheet.value(SHOWN_IN)),
        ASK,
        skillMenu());
  }

  private ImmutableList<Choice> skillMenu() {
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", text("panel.choose-skill"), true));
    IntStream.rangeClosed(1, HIGHEST)
        .mapToObj(Position::of)
        .forEach(
            position ->
                choices.add(
                    new Choice(
                        STAY + ":" + position, text("panel.stay", position.display()), false)));
    for (String shift : SHIFTS) {
      String name =
          switch (shift) {
            case "up" -> text("panel.shift-up");
            case "down" -> text("panel.shift-down");
            default -> text("panel.shift-any");
          };
      choices.add(new Choice(SHIFT + ":" + shift, name, false));
    }
    for (Technique technique : Technique.values()) {
      String id = technique.name().toLowerCase(Locale.ROOT).replace('_', '-');
      choices.add(new Choice(TECHNIQUE + ":" + id, technique.text(), false));
    }
    return ImmutableList.copyOf(choices);
  }

  /** The positions to tick. */
  public ImmutableList<Tick> ticks() {
    Map<Position, String> asked = amounts();
    boolean alike = ImmutableSet.copyOf(asked.values()).size() < 2;
    return shown().stream()
        .map(
            position ->
                new Tick(
                    tick(position),
                    alike || !asked.containsKey(position)
                        ? position.display()
                        : text("panel.position", position.display(), asked.get(position)),
                    asked.containsKey(position)))
        .collect(ImmutableList.toImmutableList());
  }

  /** The number of stopped notes to show in each position; empty if they differ. */
  public String notes() {
    ImmutableSet<String> all = ImmutableSet.copyOf(amounts().values());
    return all.isEmpty()
        ? Integer.toString(AuditionSheetFile.USUAL_NOTES)
        : all.size() == 1 ? all.asList().get(0) : "";
  }

  /** What else to show. */
  public ImmutableList<SheetView.Skill> skills() {
    DemandParser parser = DemandParser.of(instrument());
    ImmutableList.Builder<SheetView.Skill> skills = ImmutableList.builder();
    for (String key : SKILLS) {
      for (String value : sheet.keys().get(key)) {
        String words =
            LIST.splitToStream(value)
                .map(one -> parser.read(key, one).get(0).text())
                .collect(Collectors.joining(", "));
        skills.add(new SheetView.Skill(key, value, words));
      }
    }
    return skills.build();
  }

  /** What can be edited of a piece, with the words for it. */
  private static ImmutableMap<String, String> edited(SheetContent.Piece piece) {
    return piece.scale()
        ? ImmutableMap.of(
            "scale",
            text("panel.scale"),
            ScaleMenus.OCTAVES,
            text("scale.octaves-label"),
            ScaleMenus.SLUR,
            text("panel.slur"),
            "tempo",
            text("open.tempo"))
        : ImmutableMap.of(
            "measures", text("open.measures"),
            "tempo", text("open.tempo"),
            "part", text("open.part"),
            "name", text("panel.called"));
  }

  /** The fields in which a piece is edited. */
  public static ImmutableList<SheetView.Field> fields(SheetContent.Piece piece) {
    return edited(piece).entrySet().stream()
        .map(
            field ->
                new SheetView.Field(field.getKey(), field.getValue(), piece.value(field.getKey())))
        .collect(ImmutableList.toImmutableList());
  }

  /** A piece after it was edited. Keys with several values stay. */
  public static SheetContent.Piece changed(SheetContent.Piece piece, Map<String, String> fields) {
    SheetContent.Piece changed = piece;
    for (String key : edited(piece).keySet()) {
      String value = fields.getOrDefault(key, piece.value(key)).strip();
      if (!value.equals(piece.value(key))) {
        changed = changed.with(key, value);
      }
    }
    return changed;
  }

  /** What a piece is. */
  public static String name(SheetContent.Piece piece) {
    if (piece.scale()) {
      return piece.value("scale");
    }
    for (String key : ImmutableList.of("name", "lesson", "file")) {
      if (!piece.value(key).isEmpty()) {
        return piece.value(key);
      }
    }
    return text("panel.typed");
  }

  /** How a piece is to be played. */
  public static String about(SheetContent.Piece piece) {
    List<String> about = new ArrayList<>();
    for (String key : piece.keys().keySet()) {
      String values = String.join(", ", piece.keys().get(key));
      switch (key) {
        case "scale", "name", "lesson", "file", "abc" -> {}
        case "octaves" -> about.add(octaves(values));
        case "measures" -> about.add(text("panel.measures", values));
        case "tempo" -> about.add(values.replace("=", " = "));
        case "allow" -> about.add(text("panel.allow", values));
        case "slur" -> about.add(text("scale.slurred", values));
        default -> about.add(text("panel.key", key, values));
      }
    }
    return String.join(", ", about);
  }

  private static String octaves(String value) {
    return value.equals("1") ? text("scale.octaves.one", 1) : text("scale.octaves.other", value);
  }
}
