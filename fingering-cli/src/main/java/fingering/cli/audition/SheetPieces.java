package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.AuditionPiece;
import fingering.cli.audition.AuditionSheet.Entry;
import fingering.cli.audition.AuditionSheet.Line;
import fingering.cli.file.PlanFile;
import fingering.cli.file.WrongLineException;
import fingering.cli.option.LimitOptions;
import fingering.cli.option.TuneOptions;
import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.demand.GripDemand;
import fingering.exercise.PlannedScale;
import fingering.exercise.Scale;
import fingering.exercise.ScalePattern;
import fingering.exercise.ScalePlanner;
import fingering.exercise.ScaleRequest;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.plan.PlannerFactory;
import fingering.scoring.Scoring;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.util.Optional;
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
   */
  public record Ready(Entry entry, AuditionPiece piece, ScoreFile file) {}

  /**
   * A piece that cannot be planned.
   *
   * @param line the line of the sheet
   * @param says the reason, one sentence
   */
  public record Problem(int line, String says) {}

  private final AuditionSheet sheet;
  private final Instrument played;
  private final LeftHand hand;
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
    planners = new PlannerFactory(scoring, hand);
    for (Entry entry : sheet.entries()) {
      try {
        ready.add(at(entry.line(), () -> entry.scale() ? scale(entry) : excerpt(entry)));
      } catch (WrongLineException e) {
        problems.add(new Problem(e.line(), e.getMessage()));
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

  /** What a line of the sheet leads to; what is wrong with it is told with its number. */
  private static <T> T at(int line, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (WrongLineException e) {
      throw e;
    } catch (FingeringException e) {
      String says = OPTION.matcher(e.getMessage()).replaceAll("'$1'");
      throw new WrongLineException(line, says.endsWith(".") ? says : says + ".");
    }
  }

  private static <T> Optional<T> value(Entry entry, String key, ReadingOf<T> reading) {
    return entry.only(key).map(line -> at(line.line(), () -> reading.of(line.value())));
  }

  private interface ReadingOf<T> {
    T of(String text);
  }

  private Ready scale(Entry entry) {
    Scale scale = value(entry, "scale", Scale::parse).orElseThrow(() -> nameless("scale"));
    ScaleRequest request =
        new ScaleRequest(
            scale,
            value(entry, "octaves", text -> number("octaves", text)).orElse(2),
            value(entry, "pattern", ScalePattern::named).orElse(ScalePattern.STEPS),
            value(entry, "even", SheetPieces::yes).orElse(false),
            value(entry, "slur", text -> number("slur", text)).orElse(0),
            value(entry, "tempo", Tempo::parse));
    Optional<Pitch> start = value(entry, "from", scale::start);
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
    return new Ready(entry, piece, planned.exercise().file());
  }

  private static FingeringException nameless(String key) {
    return new FingeringException("'" + key + "' is missing; say which.");
  }

  private static int number(String key, String text) {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException e) {
      throw new FingeringException("'" + key + "' is a number, and '" + text + "' is none");
    }
  }

  private static boolean yes(String text) {
    return switch (text.strip()) {
      case "true", "yes" -> true;
      case "false", "no" -> false;
      default -> throw new FingeringException("'even' is yes or no, not '" + text + "'");
    };
  }

  private Ready excerpt(Entry entry) {
    ScoreFile file = at(entry.lineOf("file", "abc"), () -> file(entry));
    Score score = at(entry.lineOf("file", "abc"), () -> ScoreReader.read(file));
    Optional<String> part = entry.value("part");
    at(
        entry.lineOf("part", "file", "abc"),
        () -> forInstrument(part.map(score::part).orElseGet(() -> only(score))));
    PassageRequest request =
        new PassageRequest(
            part,
            Optional.of(sheet.instrument()),
            entry.value("measures"),
            value(entry, "tempo", Tempo::parse),
            entry.value("voice"));
    Passage passage =
        at(entry.lineOf("measures", "file", "abc"), () -> score.passage(request, one -> played));
    String name =
        entry
            .value("name")
            .orElse(passage.title().isBlank() ? passage.partName() : passage.title());
    Plan plan = plan(entry, passage, Brief.builder("free choice").withKeepPrinted(keepPrinted));
    return new Ready(entry, new AuditionPiece(name, planners.of(passage), plan, true), file);
  }

  private PartInfo only(Score score) {
    return score.onlyPart(Optional.of(sheet.instrument()));
  }

  private PartInfo forInstrument(PartInfo part) {
    Optional<Instrument> own = part.instrument().filter(one -> !part.guessed());
    if (own.isPresent() && !own.get().id().equals(sheet.instrument().id())) {
      throw new FingeringException(
          "the sheet is for the %s, but the part '%s' is for the %s: choose another part."
              .formatted(sheet.instrument().spoken(), part.name(), own.get().spoken()));
    }
    return part;
  }

  private ScoreFile file(Entry entry) {
    Optional<String> file = entry.value("file");
    Optional<String> abc = entry.value("abc");
    if (file.isPresent() == abc.isPresent()) {
      throw new FingeringException(
          "an excerpt needs either 'file', a file next to the sheet, or 'abc', a typed tune.");
    }
    TuneOptions options = new TuneOptions();
    options.limit = limit;
    options.tune = entry.value("tune");
    return file.map(name -> options.read(PlanFile.path(sheet.folder(), name)))
        .orElseGet(() -> options.read("the tune", abc.orElseThrow().replace("\\n", "\n")));
  }

  private Plan plan(Entry entry, Passage passage, Brief.Builder brief) {
    DemandParser text = PlanFile.demands(passage, sheet.folder());
    for (Line line : entry.lines()) {
      if (DemandParser.KEYS.contains(line.key())) {
        at(line.line(), () -> read(line, text, passage)).forEach(brief::addDemand);
      }
    }
    return planners.of(passage).plan(brief.build());
  }

  /** The demands of a line; measures and notes that the passage has not are refused. */
  private static ImmutableList<Demand> read(Line line, DemandParser text, Passage passage) {
    ImmutableList<Demand> demands = text.read(line.key(), line.value());
    for (Demand demand : demands) {
      if (demand instanceof GripDemand limit) {
        // Asked here only for what it refuses.
        limit.moments(passage);
      }
    }
    return demands;
  }
}
