package fingering.lesson;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import fingering.demand.DemandKeys;
import fingering.demand.DemandParser;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.practice.MetronomeScale;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.userfile.FileUpdate;
import fingering.userfile.KnownKeys;
import fingering.userfile.UserFields;
import fingering.userfile.UserFileException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** The text of a lesson, in YAML. */
public final class LessonFile {
  private static final KnownKeys KEYS =
      KnownKeys.of(
          "a lesson",
          "score: quartet.mxl",
          "tune: 3",
          "part: Viola",
          "voice: 1",
          "instrument: viola",
          "measures: 27-76",
          "tempo: half = 84",
          "slurs: {29.1: 30.2, 33.1: none}",
          "student: imke",
          "plans: [{name: mine, stay: 3@31-38}]",
          "hearing: {date: 2026-12-12, tempo: quarter = 96}",
          "journal: mill.journal",
          "circles: {shown: yes, not: [accent, 12.1 dynamic]}",
          "ladder: {rest-days: [sat, sun], metronome: traditional}",
          "below: first");

  private static final KnownKeys PLAN =
      KnownKeys.of("a plan of a lesson", "name: mine", "choose: third").and(DemandKeys.ALL);

  private static final KnownKeys HEARING =
      KnownKeys.of("a hearing", "date: 2026-12-12", "tempo: quarter = 96");

  private static final KnownKeys CIRCLES =
      KnownKeys.of("the circles of a lesson", "shown: yes", "not: [accent, 12.1 dynamic]");

  private static final KnownKeys LADDER =
      KnownKeys.of("the ladder of a lesson", "rest-days: [sat, sun]", "metronome: traditional");

  private LessonFile() {}

  /**
   * Reads the text of a lesson.
   *
   * @param name the name of the file, for messages
   * @throws UserFileException if the text is not a lesson; the message is one sentence with file
   *     and line
   */
  public static Lesson parse(String name, String text) {
    UserFields fields = UserFields.parse(name, text, KEYS);
    String score = fields.text("score").orElseThrow(() -> fields.missing("score"));
    Optional<Instrument> instrument = fields.value("instrument", Instruments.standard()::named);
    try {
      return new Lesson(
          score,
          fields.text("tune"),
          fields.text("part"),
          fields.text("voice"),
          instrument,
          fields.text("measures"),
          fields.value("tempo", Tempo::parse),
          slurs(fields),
          fields.text("student"),
          fields.parts("plans", PLAN).map(LessonFile::plans).orElse(ImmutableList.of()),
          fields.part("hearing", HEARING).map(LessonFile::hearing),
          fields.text("journal"),
          fields.part("circles", CIRCLES).map(LessonFile::circles).orElse(LessonCircles.ALL),
          fields.part("ladder", LADDER).map(LessonFile::ladder).orElse(LessonLadder.USUAL),
          fields.text("below"));
    } catch (UserFileException e) {
      throw e;
    } catch (FingeringException e) {
      throw fields.refusal(String.valueOf(e.getMessage()));
    }
  }

  /** Writes a lesson as text that {@link #parse} reads back. */
  public static String text(Lesson lesson) {
    return LessonText.of(lesson);
  }

  /**
   * Changes the text of a lesson. What does not change stays as it was written, with its remarks.
   *
   * @param before the text of the lesson before the change
   * @throws UserFileException if that text is not a lesson
   */
  public static FileUpdate update(String before, Lesson lesson) {
    return FileUpdate.of(before, lesson, text -> parse("the lesson", text), LessonText::keys);
  }

  private static SlurChanges slurs(UserFields fields) {
    try {
      return fields
          .pairs("slurs", SlurChanges.Change::parse)
          .map(SlurChanges::new)
          .orElse(SlurChanges.NONE);
    } catch (UserFileException e) {
      throw e;
    } catch (FingeringException e) {
      throw fields.place("slurs").refusal(String.valueOf(e.getMessage()));
    }
  }

  private static ImmutableList<LessonPlan> plans(ImmutableList<UserFields> all) {
    ImmutableList.Builder<LessonPlan> plans = ImmutableList.builder();
    int number = 0;
    for (UserFields fields : all) {
      number++;
      plans.add(plan(fields, "plan " + number));
    }
    return plans.build();
  }

  private static LessonPlan plan(UserFields fields, String defaultName) {
    ImmutableListMultimap.Builder<String, String> demands = ImmutableListMultimap.builder();
    for (String key : DemandParser.KEYS) {
      fields
          .values(key, value -> readable(key, value))
          .ifPresent(values -> demands.putAll(key, values));
    }
    try {
      return new LessonPlan(
          fields.text("name").orElse(defaultName),
          fields.choice("choose", LessonPlan.CHOICES.toArray(String[]::new)),
          demands.build());
    } catch (UserFileException e) {
      throw e;
    } catch (FingeringException e) {
      throw fields.refusal(String.valueOf(e.getMessage()));
    }
  }

  /**
   * A demand that can be read for at least one instrument. Only the score shows for which
   * instrument it is.
   */
  private static String readable(String key, String value) {
    if (key.equals("keep-plan")) {
      return value;
    }
    Optional<FingeringException> fault = Optional.empty();
    for (Instrument instrument : Instruments.standard().all()) {
      try {
        DemandParser.of(instrument).read(key, value);
        return value;
      } catch (FingeringException e) {
        fault = fault.or(() -> Optional.of(e));
      }
    }
    throw fault.orElseThrow();
  }

  private static Hearing hearing(UserFields fields) {
    return new Hearing(fields.value("date", LessonFile::date), fields.value("tempo", Tempo::parse));
  }

  private static LessonCircles circles(UserFields fields) {
    try {
      return new LessonCircles(
          fields.yesNo("shown").orElse(false),
          fields.values("not", text -> text).map(ImmutableSet::copyOf).orElse(ImmutableSet.of()));
    } catch (UserFileException e) {
      throw e;
    } catch (FingeringException e) {
      throw fields.refusal(String.valueOf(e.getMessage()));
    }
  }

  private static LessonLadder ladder(UserFields fields) {
    return new LessonLadder(
        fields
            .values("rest-days", LessonLadder::day)
            .map(ImmutableSet::copyOf)
            .orElse(ImmutableSet.of()),
        fields
            .choice("metronome", "exact", "traditional")
            .map(word -> MetronomeScale.valueOf(Ascii.toUpperCase(word)))
            .orElse(MetronomeScale.EXACT));
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text.strip());
    } catch (DateTimeParseException e) {
      throw new FingeringException(
          "'%s' is not a date; write year, month and day, such as 2026-12-12".formatted(text), e);
    }
  }
}
