package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.page.live.StudentsView;
import fingering.page.student.StudentForm;
import fingering.page.student.StudentsPage;
import fingering.player.PlayerStore;
import fingering.player.StoredPlayer;
import fingering.tables.FingeringException;
import fingering.web.folder.Seen;
import fingering.web.folder.StudentsFolder;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The students: their list, and the form in which one is made or changed. */
final class StudentsHandler implements Handler {
  private static final String LIST = "/students";
  private static final String NEW = "/students/new";
  private static final Pattern STUDENT =
      Pattern.compile("/students/(new|[A-Za-z0-9_-]{24})(/form)?");

  private static final String FORM = "form";
  private static final String NAME = "name";

  private final Frames frames;
  private final StudentsFolder folder;
  private final OpenLessons lessons;
  private final Clock clock;

  StudentsHandler(Frames frames, StudentsFolder folder, OpenLessons lessons, Clock clock) {
    this.frames = frames;
    this.folder = folder;
    this.lessons = lessons;
    this.clock = clock;
  }

  @Override
  public Optional<Reply> get(Request request) {
    if (request.path().equals(LIST)) {
      return Optional.of(list());
    }
    if (request.path().equals(NEW)) {
      return Optional.of(page(fresh(lesson(request.query())), Optional.empty()));
    }
    Matcher address = STUDENT.matcher(request.path());
    return address.matches() && address.group(2) == null
        ? folder
            .student(address.group(1))
            .map(entry -> page(StudentForm.of(entry.player()), Optional.of(entry)))
        : Optional.empty();
  }

  private Reply list() {
    StudentsFolder.Listing listing = folder.list();
    return Reply.html(
        Reply.DONE,
        StudentsPage.list(
            frames.titled(text("students.title")),
            new StudentsView(
                folder.path().toString(),
                listing.students().stream()
                    .map(
                        entry ->
                            new StudentsView.Line(
                                address(Optional.of(entry)),
                                entry.name(),
                                StudentsPage.about(entry.player())))
                    .collect(ImmutableList.toImmutableList()),
                listing.problems())));
  }

  private static String address(Optional<StudentsFolder.Entry> student) {
    return student.map(entry -> LIST + "/" + entry.id()).orElse(NEW);
  }

  private static String title(Optional<StudentsFolder.Entry> student) {
    return student
        .map(entry -> text("student.title", entry.name()))
        .orElseGet(() -> text("students.new"));
  }

  private Reply page(StudentForm form, Optional<StudentsFolder.Entry> student) {
    return Reply.html(
        Reply.DONE,
        StudentsPage.page(
            frames.titled(title(student)),
            form.view(
                title(student),
                address(student),
                mark(student),
                ImmutableMap.of(),
                ImmutableList.of())));
  }

  /** A mark of the text of a player file, by which a change is seen; empty for a new student. */
  private static String mark(Optional<StudentsFolder.Entry> student) {
    return student.map(entry -> entry.stored().text()).map(Seen::mark).orElse("");
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    Matcher address = STUDENT.matcher(request.path());
    if (!address.matches()) {
      return Optional.empty();
    }
    boolean fresh = address.group(1).equals("new");
    Optional<StudentsFolder.Entry> student = folder.student(address.group(1));
    if (!fresh && student.isEmpty()) {
      return Optional.empty();
    }
    ImmutableMap<String, String> fields = request.form();
    StudentForm form = StudentForm.typed(fields, student.map(StudentsFolder.Entry::player));
    return Optional.of(
        address.group(2) == null
            ? save(form, fields, student)
            : answer(
                form.shaped(), student, Seen.in(fields), ImmutableMap.of(), ImmutableList.of()));
  }

  private static Reply answer(
      StudentForm form,
      Optional<StudentsFolder.Entry> student,
      String seen,
      ImmutableMap<String, String> errors,
      ImmutableList<String> said) {
    return Reply.html(
        Reply.DONE,
        StudentsPage.form(form.view(title(student), address(student), seen, errors, said)));
  }

  private Reply save(
      StudentForm form, Map<String, String> fields, Optional<StudentsFolder.Entry> student) {
    StudentForm.Read read = form.read();
    ImmutableMap.Builder<String, String> errors = ImmutableMap.builder();
    errors.putAll(read.errors());
    Optional<Path> file =
        student.isPresent()
            ? student.map(entry -> entry.stored().file())
            : folder.fileFor(form.name());
    if (file.isEmpty()) {
      errors.put(NAME, text("student.no-name"));
    } else if (student.isEmpty() && folder.taken(file.get())) {
      errors.put(NAME, text("student.taken"));
    }
    String seen = mark(student);
    if (!seen.equals(Seen.in(fields))) {
      errors.put(FORM, text("student.changed", student.map(StudentsFolder.Entry::name).orElse("")));
    }
    ImmutableMap<String, String> wrong = errors.buildOrThrow();
    if (!wrong.isEmpty()) {
      return answer(form, student, seen, wrong, ImmutableList.of());
    }
    Optional<StoredPlayer> before = student.map(StudentsFolder.Entry::stored);
    PlayerStore.Saved saved =
        folder.save(file.orElseThrow(), read.player(), before, LocalDate.now(clock));
    Optional<StudentsFolder.Entry> now = folder.in(file.get());
    Optional<OpenLesson> lesson = lesson(fields);
    if (lesson.isPresent() && now.isPresent()) {
      return chosen(lesson.get(), now.get());
    }
    return answer(
            now.map(entry -> StudentForm.of(entry.player())).orElse(form),
            now,
            mark(now),
            ImmutableMap.of(),
            said(saved, before))
        .with("HX-Replace-Url", address(now));
  }

  private static StudentForm fresh(Optional<OpenLesson> lesson) {
    return lesson
        .flatMap(
            open ->
                open.planned().map(now -> StudentForm.fresh(open.id(), now.passage().instrument())))
        .orElseGet(StudentForm::fresh);
  }

  /** The lesson for which a student is made. */
  private Optional<OpenLesson> lesson(Map<String, String> fields) {
    return lessons.get(fields.getOrDefault(StudentForm.LESSON, ""));
  }

  /** Goes back to a lesson, which is now that of a student if the student can play it. */
  private Reply chosen(OpenLesson open, StudentsFolder.Entry student) {
    try {
      lessons.choose(
          open.id(),
          open.revision(),
          (now, plans) ->
              OpenLessons.step(
                  now, now.lesson().withStudent(Optional.of(student.nameIn(now.stored())))));
    } catch (FingeringException e) {
      // The student is saved; the page of the lesson says what stands in the way when one chooses.
    }
    return Reply.of(Reply.EMPTY, "text/html", "").with("HX-Redirect", open.address());
  }

  private static ImmutableList<String> said(
      PlayerStore.Saved saved, Optional<StoredPlayer> before) {
    Path file = saved.player().file();
    if (before.map(StoredPlayer::text).equals(Optional.of(saved.player().text()))) {
      return ImmutableList.of(text("student.unchanged", file.getFileName()));
    }
    ImmutableList.Builder<String> said = ImmutableList.builder();
    said.add(text("student.saved", file));
    saved.copy().ifPresent(copy -> said.add(text("student.kept", copy.getFileName())));
    if (!saved.lostRemarks().isEmpty()) {
      said.add(text("student.lost", String.join(" / ", saved.lostRemarks())));
    }
    return said.build();
  }
}
