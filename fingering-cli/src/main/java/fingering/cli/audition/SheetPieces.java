package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import fingering.audition.AuditionPiece;
import fingering.cli.file.PlanFile;
import fingering.cli.option.LimitOptions;
import fingering.cli.option.TuneOptions;
import fingering.cli.text.HeadingText;
import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.demand.GripDemand;
import fingering.exercise.PlannedScale;
import fingering.exercise.Scale;
import fingering.exercise.ScalePattern;
import fingering.exercise.ScalePlanner;
import fingering.exercise.ScaleRequest;
import fingering.fingerboard.LeftHand;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.lesson.LessonPlanner;
import fingering.lesson.StoredLesson;
import fingering.music.Passage;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.music.print.PrintedPart;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.Planner;
import fingering.plan.PlannerFactory;
import fingering.scoring.Scoring;
import fingering.sheet.AuditionSheet;
import fingering.sheet.AuditionSheet.Entry;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import fingering.userfile.FileLine;
import fingering.userfile.UserFields;
import fingering.userfile.UserFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** Reads and plans the pieces of an audition sheet one by one. */
public final class SheetPieces {
  /** Options in messages that are keys in a sheet. */
  private static final Pattern OPTION =
      Pattern.compile("--(tune|part|voice|measures|tempo|instrument)\\b");

  /**
   * A piece that can be planned.
   *
   * @param entry its entry in the sheet
   * @param piece the piece
   * @param file the score that contains it
   * @param printed what is printed in it
   */
  public record Ready(Entry entry, AuditionPiece piece, ScoreFile file, PrintedPart printed) {}

  /**
   * A piece that cannot be planned.
   *
   * @param line the line of the sheet
   * @param message the reason, one sentence
   */
  public record Problem(int line, String message) {}

  private final AuditionSheet sheet;
  private final Instrument played;
  private final LeftHand hand;
  private final Scoring scoring;
  private final PlannerFactory planners;
  private final boolean keepPrinted;
  private final LimitOptions limit;
  private final ImmutableList.Builder<Ready> ready = ImmutableList.builder();
  private final ImmutableList.Builder<Problem> problems = ImmutableList.builder();

  /**
   * Reads and plans all pieces of a sheet.
   *
   * @param played the instrument of the sheet with its tuning and size
   * @param keepPrinted whether excerpts keep the printed fingering
   */
  public SheetPieces(
      AuditionSheet sheet,
      Instrument played,
      LeftHand hand,
      Scoring scoring,
      boolean keepPrinted,
      LimitOptions limit) {
    this.sheet = sheet;
    this.played = played;
    this.hand = hand;
    this.keepPrinted = keepPrinted;
    this.limit = limit;
    this.scoring = scoring;
    planners = new PlannerFactory(scoring, hand);
    for (Entry entry : sheet.entries()) {
      try {
        ready.add(at(entry.line(), () -> entry.scale() ? scale(entry) : excerpt(entry)));
      } catch (UserFileException e) {
        String message = OPTION.matcher(e.problem()).replaceAll("'$1'");
        problems.add(
            new Problem(
                e.place().line(),
                message.endsWith(".") || message.endsWith("?") ? message : message + "."));
      }
    }
  }

  /** The pieces that can be planned, in the order of the sheet. */
  public ImmutableList<Ready> ready() {
    return ready.build();
  }

  /** Why the other pieces cannot be planned. */
  public ImmutableList<Problem> problems() {
    return problems.build();
  }

  /** Reads or plans something; an exception that has no line yet gets this one. */
  private <T> T at(int line, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (UserFileException e) {
      throw e;
    } catch (FingeringException e) {
      throw new FileLine(sheet.file(), line).refusal(e.getMessage());
    }
  }

  private Ready scale(Entry entry) {
    UserFields fields = entry.fields();
    Scale scale = fields.value("scale", Scale::parse).orElseThrow(() -> fields.missing("scale"));
    ScaleRequest request =
        new ScaleRequest(
            scale,
            fields.value("octaves", SheetPieces::number).orElse(2),
            fields.value("pattern", ScalePattern::named).orElse(ScalePattern.STEPS),
            fields.yesNo("even").orElse(false),
            fields.value("slur", SheetPieces::number).orElse(0),
            fields.value("tempo", Tempo::parse));
    Optional<Pitch> start = fields.value("from", scale::start);
    PlannedScale planned =
        at(
            entry.lineOf("scale"),
            () ->
                ScalePlanner.plan(
                    request,
                    played,
                    hand,
                    start,
                    passage -> plan(entry, passage, Brief.builder("free choice"))));
    Plan plan = planned.plan();
    Planner planner = planners.of(plan.passage());
    AuditionPiece piece = new AuditionPiece(request.title(), planner, plan, !sheet.excerptsOnly());
    return new Ready(
        entry,
        piece,
        planned.exercise().file(),
        planned.score().printed(plan.passage(), Optional.empty()));
  }

  private static int number(String text) {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException e) {
      throw new FingeringException("'" + text + "' is not a whole number");
    }
  }

  private Ready excerpt(Entry entry) {
    UserFields fields = entry.fields();
    Optional<StoredLesson> lesson = at(entry.lineOf("lesson"), () -> lesson(fields));
    ScoreFile file = at(entry.lineOf("file", "lesson", "abc"), () -> file(entry, lesson));
    Score score = at(entry.lineOf("file", "lesson", "abc"), () -> ScoreReader.read(file));
    Optional<String> part = fields.text("part").or(() -> of(lesson, Lesson::part));
    at(
        entry.lineOf("part", "file", "lesson", "abc"),
        () -> forInstrument(part.map(score::part).orElseGet(() -> only(score))));
    PassageRequest request =
        new PassageRequest(
            part,
            Optional.of(sheet.instrument()),
            fields.text("measures").or(() -> of(lesson, Lesson::measures)),
            fields.value("tempo", Tempo::parse).or(() -> of(lesson, Lesson::tempo)),
            fields.text("voice").or(() -> of(lesson, Lesson::voice)),
            true,
            fields.has("part")
                ? SlurChanges.NONE
                : lesson.map(one -> one.lesson().slurs()).orElse(SlurChanges.NONE));
    Passage passage =
        at(
            entry.lineOf("measures", "file", "lesson", "abc"),
            () -> score.passage(request, one -> played));
    String name = fields.text("name").orElse(HeadingText.title(passage));
    Plan plan =
        lesson
            .flatMap(one -> one.lesson().chosen().map(one::here))
            .map(chosen -> chosen(entry, passage, chosen))
            .orElseGet(
                () ->
                    plan(
                        entry, passage, Brief.builder("free choice").withKeepPrinted(keepPrinted)));
    return new Ready(
        entry,
        new AuditionPiece(name, planners.of(passage), plan, true),
        file,
        score.printed(passage, request.voice()));
  }

  private static <T> Optional<T> of(
      Optional<StoredLesson> lesson, Function<Lesson, Optional<T>> value) {
    return lesson.flatMap(one -> value.apply(one.lesson()));
  }

  private Optional<StoredLesson> lesson(UserFields fields) {
    return fields
        .text("lesson")
        .map(name -> PlanFile.path(sheet.folder(), name))
        .map(StoredLesson::read);
  }

  /** The chosen plan of a lesson, with the demands of the sheet besides. */
  private Plan chosen(Entry entry, Passage passage, LessonPlan chosen) {
    DemandParser text = PlanFile.demands(passage, sheet.folder());
    ImmutableListMultimap.Builder<String, String> more = ImmutableListMultimap.builder();
    for (String key : entry.fields().keys()) {
      if (DemandParser.KEYS.contains(key)) {
        entry
            .fields()
            .values(
                key,
                value -> {
                  read(key, value, text, passage);
                  return value;
                })
            .ifPresent(all -> more.putAll(key, all));
      }
    }
    return new LessonPlanner(PlanComparer.of(passage, scoring, hand, ImmutableSet.of()), text)
        .plan(chosen.with(more.build()));
  }

  private PartInfo only(Score score) {
    return score.onlyPart(Optional.of(sheet.instrument()));
  }

  private PartInfo forInstrument(PartInfo part) {
    Optional<Instrument> own = part.instrument().filter(one -> part.isString());
    if (own.isPresent() && !own.get().id().equals(sheet.instrument().id())) {
      throw new FingeringException(
          "the sheet is for the %s, but the part '%s' is for the %s: choose another part."
              .formatted(
                  sheet.instrument().nameInSentence(), part.name(), own.get().nameInSentence()));
    }
    return part;
  }

  private ScoreFile file(Entry entry, Optional<StoredLesson> lesson) {
    Optional<Path> file =
        entry
            .fields()
            .text("file")
            .map(name -> PlanFile.path(sheet.folder(), name))
            .or(() -> lesson.map(StoredLesson::scoreFile));
    Optional<String> abc = entry.fields().text("abc");
    boolean twice = lesson.isPresent() && entry.fields().has("file");
    if (file.isPresent() == abc.isPresent() || twice) {
      throw new FingeringException(
          "an excerpt needs either 'file', a file next to the sheet, or 'lesson', a lesson next to it, or 'abc', a typed tune.");
    }
    TuneOptions options = new TuneOptions();
    options.limit = limit;
    options.tune = entry.fields().text("tune").or(() -> of(lesson, Lesson::tune));
    return file.map(options::read)
        .orElseGet(() -> options.read("the tune", abc.orElseThrow().replace("\\n", "\n")));
  }

  private Plan plan(Entry entry, Passage passage, Brief.Builder brief) {
    DemandParser text = PlanFile.demands(passage, sheet.folder());
    for (String key : entry.fields().keys()) {
      if (DemandParser.KEYS.contains(key)) {
        entry
            .fields()
            .values(key, value -> read(key, value, text, passage))
            .ifPresent(all -> all.forEach(each -> each.forEach(brief::addDemand)));
      }
    }
    return planners.of(passage).plan(brief.build());
  }

  /** Reads the demands of a value, and refuses measures and notes that the passage lacks. */
  private static ImmutableList<Demand> read(
      String key, String value, DemandParser text, Passage passage) {
    ImmutableList<Demand> demands = text.read(key, value);
    for (Demand demand : demands) {
      if (demand instanceof GripDemand limit) {
        // Called only to check the measures and notes.
        limit.moments(passage);
      }
    }
    return demands;
  }
}
