package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.cache.Cache;
import com.google.common.cache.CacheBuilder;
import com.google.common.collect.ImmutableList;
import com.google.common.primitives.Ints;
import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.musicxml.reading.PartInfo;
import fingering.page.LivePage;
import fingering.page.PageContent;
import fingering.page.live.BesideView;
import fingering.page.live.StudentView;
import fingering.page.student.StudentRows;
import fingering.page.student.StudentRows.Planned;
import fingering.page.student.StudentsPage;
import fingering.player.Player;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.web.folder.StudentsFolder;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.Adviser;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import fingering.web.lesson.Setting;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The excerpt of an open score for several students side by side. */
final class BesideHandler implements Handler {
  private static final Pattern BESIDE =
      Pattern.compile("/open/([A-Za-z0-9_-]{24})/students(/rows)?");

  private static final String STUDENT = "student-";

  /** The width of a window that does not say its own, in pixels. */
  private static final int USUAL_WINDOW = 1200;

  /** The plans that are kept. */
  private static final int KEPT = 8;

  /** Nobody waits longer for plans. */
  private static final long MOST_NANOS = 10_000_000_000L;

  private final Frames frames;
  private final TeachersFolder teachers;
  private final StudentsFolder folder;
  private final OpenLessons lessons;
  private final Adviser adviser;

  /** The last plans, so that one more student takes the time of one. */
  private final Cache<Asked, PageContent> kept =
      CacheBuilder.newBuilder().maximumSize(KEPT).build();

  BesideHandler(
      Frames frames,
      TeachersFolder teachers,
      StudentsFolder folder,
      OpenLessons lessons,
      Adviser adviser) {
    this.frames = frames;
    this.teachers = teachers;
    this.folder = folder;
    this.lessons = lessons;
    this.adviser = adviser;
  }

  @Override
  public Optional<Reply> get(Request request) {
    Matcher address = BESIDE.matcher(request.path());
    Optional<OpenLesson> open =
        address.matches() ? lessons.opened(address.group(1), teachers::file) : Optional.empty();
    return open.map(
        score ->
            address.group(2) == null
                ? page(score)
                : Reply.html(Reply.DONE, StudentsPage.rows(rows(score, request.query()))));
  }

  @Override
  public Optional<Reply> post(Request request) {
    return Optional.empty();
  }

  private Reply page(OpenLesson open) {
    List<StudentsFolder.Entry> all = folder.list().students();
    Optional<StudentsFolder.Entry> own = folder.of(open.stored());
    String others =
        all.stream()
            .filter(entry -> !plays(entry, open))
            .map(StudentsFolder.Entry::name)
            .collect(Collectors.joining(", "));
    BesideView view =
        new BesideView(
            open.address() + "/students",
            open.address(),
            about(open),
            all.stream()
                .filter(entry -> plays(entry, open))
                .map(
                    entry ->
                        new StudentView.Tick(
                            STUDENT + entry.id(),
                            entry.name(),
                            own.filter(entry::equals).isPresent()))
                .collect(ImmutableList.toImmutableList()),
            others.isEmpty() ? "" : text("beside.others", others),
            LivePage.shapes());
    return Reply.html(
        Reply.DONE, StudentsPage.beside(frames.titled(text("beside.title", open.title())), view));
  }

  private static Optional<PartInfo> part(OpenLesson open) {
    return open.lesson().part().map(open.score()::part);
  }

  private static String about(OpenLesson open) {
    Lesson lesson = open.lesson();
    String part = part(open).map(PartInfo::name).orElse("");
    return lesson.measures().map(measures -> text("beside.about", part, measures)).orElse(part);
  }

  /** Whether a student plays the instrument of the part, or may play it. */
  private static boolean plays(StudentsFolder.Entry student, OpenLesson open) {
    Optional<String> wanted =
        open.lesson()
            .instrument()
            .or(() -> part(open).filter(PartInfo::isString).flatMap(PartInfo::instrument))
            .map(Instrument::id);
    Optional<String> own = student.player().instrument().map(Instrument::id);
    return wanted.isEmpty() || own.isEmpty() || wanted.equals(own);
  }

  private BesideView.Rows rows(OpenLesson open, Map<String, String> query) {
    List<StudentsFolder.Entry> ticked =
        folder.list().students().stream()
            .filter(entry -> query.containsKey(STUDENT + entry.id()))
            .toList();
    if (ticked.isEmpty()) {
      return new BesideView.Rows(
          ImmutableList.of(text("beside.few")), ImmutableList.of(), ImmutableList.of(), "");
    }
    if (ticked.size() > StudentRows.MOST) {
      throw new FingeringException(text("beside.many"));
    }
    long start = System.nanoTime();
    ImmutableList.Builder<Planned> planned = ImmutableList.builder();
    for (StudentsFolder.Entry student : ticked) {
      planned.add(
          new Planned(
              student.name(),
              student.player(),
              plans(open, student, () -> System.nanoTime() - start > MOST_NANOS)));
    }
    int window = Optional.ofNullable(query.get("window")).map(Ints::tryParse).orElse(USUAL_WINDOW);
    return StudentRows.of(planned.build(), window);
  }

  /**
   * What plans are made for.
   *
   * @param setting the score and the lesson with the student
   * @param player what the player file says
   */
  private record Asked(Setting setting, Player player) {}

  /** The plans for a student instead of that of the lesson. */
  private PageContent plans(
      OpenLesson open, StudentsFolder.Entry student, Cancellation cancellation) {
    StoredLesson own = open.stored();
    Lesson lesson = own.lesson().withStudent(Optional.of(student.nameIn(own)));
    StoredLesson stored = new StoredLesson(own.file(), lesson, own.text());
    Asked asked = new Asked(Setting.of(open.stamp(), stored), student.player());
    PageContent known = kept.getIfPresent(asked);
    if (known != null) {
      return known;
    }
    try {
      PageContent made = adviser.advise(open.file(), open.score(), stored, cancellation).content();
      kept.put(asked, made);
      return made;
    } catch (CancellationException e) {
      throw new FingeringException(text("open.slow"), e);
    }
  }
}
