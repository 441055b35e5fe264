package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.cache.Cache;
import com.google.common.cache.CacheBuilder;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.exercise.ScaleRequest;
import fingering.files.FileProblem;
import fingering.files.TextFiles;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.lesson.LessonStore;
import fingering.lesson.StoredLesson;
import fingering.musicxml.marking.ScoreMarker;
import fingering.page.audition.AskedScale;
import fingering.page.audition.ScaleMenus;
import fingering.page.audition.ScaleResult;
import fingering.page.audition.ScaleWays;
import fingering.page.audition.SheetForm;
import fingering.page.audition.SheetsPage;
import fingering.page.live.ScalesView;
import fingering.page.live.StudentView.Choice;
import fingering.plan.marks.PlanMarks;
import fingering.player.Player;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.web.audition.SheetContext;
import fingering.web.audition.SheetsFolder;
import fingering.web.folder.NewName;
import fingering.web.folder.StudentsFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The page of scales: their fingerings, kept as lessons or added to audition sheets. */
final class ScalesHandler implements Handler {
  static final String PAGE = "/scales";

  private static final String SHEET = "sheet";
  private static final String STUDENT = "student";

  /** The scales that are kept. */
  private static final int KEPT = 8;

  /** More names than that are not tried. */
  private static final int MOST_NAMES = 100;

  private final Frames frames;
  private final SheetContext context;

  /** The last scales, so that another fingering of one is there at once. */
  private final Cache<Asked, ScaleResult> kept =
      CacheBuilder.newBuilder().maximumSize(KEPT).build();

  ScalesHandler(Frames frames, SheetContext context) {
    this.frames = frames;
    this.context = context;
  }

  @Override
  public Optional<Reply> get(Request request) {
    return switch (request.path()) {
      case PAGE -> Optional.of(page(request.query()));
      case PAGE + "/ways" -> Optional.of(ways(request.query()));
      default -> Optional.empty();
    };
  }

  private Reply page(ImmutableMap<String, String> query) {
    Map<String, String> fields = new HashMap<>(query);
    Optional<SheetsFolder.Entry> sheet =
        Optional.ofNullable(query.get(SHEET)).flatMap(context.sheets()::sheet);
    sheet.ifPresent(
        entry -> {
          fields.put(
              ScaleMenus.INSTRUMENT, new SheetForm(entry.stored().content()).instrument().id());
          context.student(entry.stored()).ifPresent(one -> fields.put(STUDENT, one.id()));
        });
    return Reply.html(
        Reply.DONE,
        SheetsPage.scales(
            frames.titled(text("scales.title")),
            new ScalesView(
                ImmutableMap.<String, ImmutableList<Choice>>builder()
                    .putAll(ScaleMenus.of(fields))
                    .put(STUDENT, studentMenu(fields.getOrDefault(STUDENT, "")))
                    .buildOrThrow(),
                context.sheets().list().sheets().stream()
                    .map(
                        entry ->
                            new Choice(
                                entry.id(), entry.title(), sheet.filter(entry::equals).isPresent()))
                    .collect(ImmutableList.toImmutableList()))));
  }

  private ImmutableList<Choice> studentMenu(String chosen) {
    return Stream.concat(
            Stream.of(new Choice("", text("panel.anyone"), chosen.isEmpty())),
            context.students().list().students().stream()
                .map(one -> new Choice(one.id(), one.name(), one.id().equals(chosen))))
        .collect(ImmutableList.toImmutableList());
  }

  private Optional<StudentsFolder.Entry> student(Map<String, String> fields) {
    return Optional.ofNullable(fields.get(STUDENT)).flatMap(context.students()::student);
  }

  private static Instrument instrument(Map<String, String> fields) {
    return Instruments.standard().named(fields.getOrDefault(ScaleMenus.INSTRUMENT, ""));
  }

  /**
   * What fingerings are made for.
   *
   * @param request the scale and how to play it
   * @param instrument the id of the instrument
   * @param from where it begins; empty for the lowest place
   * @param player what the player file says; empty for an unknown player
   */
  private record Asked(
      ScaleRequest request, String instrument, String from, Optional<Player> player) {}

  private ScaleResult planned(AskedScale asked, Map<String, String> fields) {
    Instrument instrument = instrument(fields);
    Optional<StudentsFolder.Entry> student = student(fields);
    student
        .filter(
            one ->
                one.player()
                    .instrument()
                    .filter(own -> !own.id().equals(instrument.id()))
                    .isPresent())
        .ifPresent(
            one -> {
              throw new FingeringException(
                  text("scale.other-instrument", one.name(), instrument.nameInSentence()));
            });
    Asked key =
        new Asked(
            asked.request(),
            instrument.id(),
            asked.from(),
            student.map(StudentsFolder.Entry::player));
    ScaleResult known = kept.getIfPresent(key);
    if (known != null) {
      return known;
    }
    ScaleResult made =
        context
            .adviser()
            .scale(
                asked.request(), instrument, asked.from(), student.map(one -> one.stored().file()));
    kept.put(key, made);
    return made;
  }

  private Reply ways(ImmutableMap<String, String> query) {
    AskedScale asked = AskedScale.of(query);
    String instrument = instrument(query).nameInSentence();
    return Reply.html(
        Reply.DONE,
        SheetsPage.ways(
            ScaleWays.of(
                planned(asked, query),
                asked.way(),
                student(query)
                    .map(one -> text("panel.for", one.name(), instrument))
                    .orElseGet(() -> text("panel.for-anyone", instrument)))));
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    return switch (request.path()) {
      case PAGE + "/keep" -> Optional.of(kept(request.form()));
      case PAGE + "/add" -> Optional.of(added(request.form()));
      default -> Optional.empty();
    };
  }

  private Reply added(ImmutableMap<String, String> fields) {
    SheetsFolder.Entry sheet =
        context
            .sheets()
            .sheet(fields.getOrDefault(SHEET, ""))
            .orElseThrow(() -> new FingeringException(text("scale.choose-sheet")));
    Instrument own = new SheetForm(sheet.stored().content()).instrument();
    if (!own.id().equals(instrument(fields).id())) {
      throw new FingeringException(text("scale.other-sheet", sheet.title(), own.nameInSentence()));
    }
    AskedScale asked = AskedScale.of(fields);
    // Whoever adds a scale that cannot be played hears it here.
    ScaleWays.shown(planned(asked, fields), asked.way());
    context.save(sheet, sheet.stored().content().with(asked.piece()));
    return Reply.html(
        Reply.DONE,
        SheetsPage.added(
            text("scale.added", asked.request().title(), sheet.title()),
            AuditionHandler.LIST + "/" + sheet.id(),
            text("scale.open-sheet")));
  }

  /** Keeps a scale as a score with its fingers, and as a lesson that opens with them. */
  private Reply kept(ImmutableMap<String, String> fields) {
    AskedScale asked = AskedScale.of(fields);
    ScaleResult.Way way = ScaleWays.shown(planned(asked, fields), asked.way());
    Path score = unused(name(asked, way));
    String base = String.valueOf(score.getFileName()).replaceFirst("\\.musicxml$", "");
    Path file = score.resolveSibling(base + ".yaml");
    try {
      Files.createDirectories(context.folder().path());
      TextFiles.create(
          score.toAbsolutePath(),
          ScoreMarker.mark(
              way.planned().exercise().file().text(), PlanMarks.of(way.planned().plan())));
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(score, e), e);
    }
    Lesson lesson =
        Lesson.of(String.valueOf(score.getFileName()))
            .withStudent(
                student(fields).map(one -> StoredLesson.studentName(file, one.stored().file())));
    LessonStore.save(
        file,
        asked.way().isEmpty()
            ? lesson
            : lesson.choosing(new LessonPlan(text("plan.mine"), Optional.empty(), asked.demands())),
        Optional.empty(),
        context.today());
    return Reply.html(
        Reply.DONE,
        SheetsPage.added(
            text("scale.kept", score.getFileName(), file.getFileName(), context.folder().path()),
            "/open/" + context.folder().id(String.valueOf(file.getFileName())),
            text("scale.open")));
  }

  private static String name(AskedScale asked, ScaleResult.Way way) {
    List<String> words = new ArrayList<>();
    words.add(
        asked
            .request()
            .title()
            .replace("♯", text("scale.sharp"))
            .replace("♭", text("scale.flat"))
            .replace(",", ""));
    if (!way.position().isEmpty()) {
      words.add(text("scale.file", way.position()));
    }
    return String.join(" ", words);
  }

  /** A file of the folder that does not exist yet, nor a lesson of its name. */
  private Path unused(String name) {
    for (int i = 1; i < MOST_NAMES; i++) {
      String tried = i == 1 ? name : name + " " + i;
      Path score = context.folder().path().resolve(tried + ".musicxml");
      if (!NewName.taken(score) && !NewName.taken(score.resolveSibling(tried + ".yaml"))) {
        return score;
      }
    }
    throw new FingeringException(text("save.names", name));
  }
}
