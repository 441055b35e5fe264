package fingering.sheet;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import fingering.demand.DemandKeys;
import fingering.demand.DemandParser;
import fingering.demand.Skill;
import fingering.sheet.AuditionSheet.Entry;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.userfile.KnownKeys;
import fingering.userfile.UserFields;
import java.nio.file.Path;

/** Reads an audition sheet. */
public final class AuditionSheetFile {
  /** Stopped notes of a position for which the sheet gives no number. */
  public static final int USUAL_NOTES = 8;

  static final String WHAT = "an audition sheet";

  private static final Splitter LIST = Splitter.on(',').trimResults().omitEmptyStrings();

  private static final ImmutableSet<String> SKILLS =
      ImmutableSet.of("positions", "show-stay", "show-shift", "show-technique");

  private static final KnownKeys SHEET =
      KnownKeys.of(
          WHAT,
          "title: Audition",
          "instrument: viola",
          "student: imke",
          "counted: together",
          "shown-in: excerpts",
          "positions: [1, 2, 3=12]",
          "show-stay: 3=4",
          "show-shift: up=2",
          "show-technique: fourth-finger",
          "scales: [{scale: D major}]",
          "excerpts: [{file: part.musicxml}]");

  private static final KnownKeys SCALE =
      KnownKeys.of(
              "a scale",
              "scale: D major",
              "octaves: 2",
              "from: D4",
              "pattern: thirds",
              "slur: 4",
              "even: yes",
              "tempo: quarter=72")
          .and(DemandKeys.ALL);

  private static final KnownKeys EXCERPT =
      KnownKeys.of(
              "an excerpt",
              "file: part.musicxml",
              "lesson: mill.yaml",
              "abc: 'K:D\\nD2 F2|'",
              "tune: 3",
              "name: Trio",
              "part: Viola",
              "voice: 1",
              "measures: 9-24",
              "tempo: quarter=72")
          .and(DemandKeys.ALL);

  private final UserFields fields;
  private final ImmutableList.Builder<Entry> entries = ImmutableList.builder();
  private int number;

  private AuditionSheetFile(UserFields fields) {
    this.fields = fields;
  }

  /**
   * Reads a sheet.
   *
   * @throws FingeringException if the file cannot be read; the message is one sentence with file
   *     and line
   */
  public static AuditionSheet read(Path file) {
    UserFields fields = UserFields.read(file, SHEET);
    if (!hasPieces(fields)) {
      throw fields.refusal("the sheet lists nothing to play; add scales or excerpts");
    }
    return new AuditionSheetFile(fields).sheet(file.toString());
  }

  private static boolean hasPieces(UserFields fields) {
    return fields.has(SheetText.SCALES) || fields.has(SheetText.EXCERPTS);
  }

  /**
   * A sheet that says something.
   *
   * @param file the file that it would be in; names of files are relative to its folder
   * @throws FingeringException if the content has a mistake; the message is one sentence
   */
  public static AuditionSheet of(Path file, SheetContent content) {
    String text = String.join("", SheetText.keys(content).values());
    return new AuditionSheetFile(UserFields.parse(file.toString(), text, SHEET))
        .sheet(file.toString());
  }

  /**
   * Reads what the text of a sheet says. It need not have any pieces yet.
   *
   * @param name the name of the file, for messages
   * @throws FingeringException if it has a mistake, or is another file; the message is one sentence
   *     with file and line
   */
  static SheetContent content(String name, String text) {
    UserFields fields = UserFields.parse(name, text, SHEET);
    if (!fields.has("title") && !hasPieces(fields)) {
      throw fields.missing("title");
    }
    AuditionSheet sheet = new AuditionSheetFile(fields).sheet(name);
    return new SheetContent(
        values(fields),
        sheet.entries().stream()
            .map(entry -> new SheetContent.Piece(entry.scale(), values(entry.fields())))
            .collect(ImmutableList.toImmutableList()));
  }

  private static ImmutableListMultimap<String, String> values(UserFields fields) {
    ImmutableListMultimap.Builder<String, String> values = ImmutableListMultimap.builder();
    for (String key : fields.keys()) {
      if (!key.equals(SheetText.SCALES) && !key.equals(SheetText.EXCERPTS)) {
        values.putAll(key, fields.values(key, value -> value).orElse(ImmutableList.of()));
      }
    }
    return values.build();
  }

  private AuditionSheet sheet(String file) {
    for (String key : fields.keys()) {
      switch (key) {
        case SheetText.SCALES -> entries(key, SCALE, true);
        case SheetText.EXCERPTS -> entries(key, EXCERPT, false);
        default -> {}
      }
    }
    Instrument instrument =
        fields
            .value("instrument", Instruments.standard()::named)
            .orElseThrow(() -> fields.missing("instrument"));
    return new AuditionSheet(
        file,
        fields.text("title").orElse("Audition"),
        instrument,
        fields.text("student"),
        skills(DemandParser.of(instrument)),
        isChosen("counted", "together", "in-one-piece"),
        isChosen("shown-in", "all", "excerpts"),
        entries.build());
  }

  private void entries(String key, KnownKeys keys, boolean scale) {
    for (UserFields part : fields.parts(key, keys).orElse(ImmutableList.of())) {
      number++;
      entries.add(new Entry(number, scale, part));
    }
  }

  private boolean isChosen(String key, String usual, String other) {
    return fields.choice(key, usual, other).filter(other::equals).isPresent();
  }

  private ImmutableList<Skill> skills(DemandParser demands) {
    ImmutableList.Builder<Skill> skills = ImmutableList.builder();
    for (String key : fields.keys()) {
      if (SKILLS.contains(key)) {
        fields
            .values(
                key,
                value -> LIST.splitToStream(value).map(one -> skill(key, one, demands)).toList())
            .ifPresent(all -> all.forEach(skills::addAll));
      }
    }
    return skills.build();
  }

  private static Skill skill(String key, String value, DemandParser demands) {
    boolean positions = key.equals("positions");
    String counted = positions && value.indexOf('=') < 0 ? value + "=" + USUAL_NOTES : value;
    return (Skill) demands.read(positions ? "show" : key, counted).get(0);
  }
}
