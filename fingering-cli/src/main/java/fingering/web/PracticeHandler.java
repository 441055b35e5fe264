package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.primitives.Ints;
import fingering.demand.MeasureSpan;
import fingering.lesson.Hearing;
import fingering.lesson.Lesson;
import fingering.lesson.LessonLadder;
import fingering.music.BeatUnit;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.page.LessonTools;
import fingering.page.live.PracticeNow;
import fingering.page.live.PracticeView;
import fingering.page.live.StudentView.Tick;
import fingering.practice.JournalEntry;
import fingering.practice.MetronomeScale;
import fingering.tables.FingeringException;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.LessonJournal;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import fingering.web.lesson.Planned;
import java.io.IOException;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The practice page of a lesson: the hearing, the journal, the ladder and the spots. */
final class PracticeHandler implements Handler {
  private static final Pattern ADDRESS =
      Pattern.compile("/open/([A-Za-z0-9_-]{24})/(practice|ladder|hearing|clean|bad|back)");

  private final TeachersFolder folder;
  private final OpenLessons lessons;
  private final Frames frames;
  private final Clock clock;

  PracticeHandler(TeachersFolder folder, OpenLessons lessons, Frames frames, Clock clock) {
    this.folder = folder;
    this.lessons = lessons;
    this.frames = frames;
    this.clock = clock;
  }

  @Override
  public Optional<Reply> get(Request request) {
    Matcher address = ADDRESS.matcher(request.path());
    return address.matches()
        ? lessons
            .opened(address.group(1), folder::file)
            .flatMap(
                open ->
                    switch (address.group(2)) {
                      case "practice" -> Optional.of(page(open));
                      case "ladder" -> Optional.of(now(lessons.planned(open.id())));
                      default -> Optional.empty();
                    })
        : Optional.empty();
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    Matcher address = ADDRESS.matcher(request.path());
    if (!address.matches()) {
      return Optional.empty();
    }
    Optional<OpenLesson> open = lessons.opened(address.group(1), folder::file);
    if (open.isEmpty()) {
      return Optional.empty();
    }
    String id = open.get().id();
    Map<String, String> form = request.form();
    return switch (address.group(2)) {
      case "hearing" -> Optional.of(now(heard(id, form)));
      case "clean" ->
          Optional.of(
              now(
                  add(
                      id,
                      Optional.of(
                          given(form, "clean")
                              .map(mark -> Tempo.parse(mark, beat(lessons.planned(id).open())))
                              .orElseThrow(
                                  () -> new FingeringException(text("practice.no-tempo")))),
                      form)));
      case "bad" -> Optional.of(now(add(id, Optional.empty(), form)));
      case "back" -> Optional.of(now(takenBack(id, form)));
      default -> Optional.empty();
    };
  }

  private Reply page(OpenLesson open) {
    return Reply.html(
        Reply.DONE,
        LessonTools.practice(frames.titled(text("practice.title", open.title())), open.address()));
  }

  private Reply now(OpenLessons.State state) {
    OpenLesson open = state.open();
    Planned planned = open.planned().orElseThrow();
    Optional<LessonJournal> journal = LessonJournal.of(open.stored(), folder.path());
    PracticeNow now = planned.advice().practice(planned.plan(), open.stored(), today());
    Optional<Hearing> hearing = open.lesson().hearing();
    return Reply.html(
        Reply.DONE,
        LessonTools.practice(
            new PracticeView(
                open.address(),
                open.revision(),
                hearing.flatMap(Hearing::date).map(LocalDate::toString).orElse(""),
                hearing.flatMap(Hearing::tempo).map(PracticeHandler::mark).orElse(""),
                text("practice.tempo-example", beat(open)),
                days(open.lesson().ladder()),
                open.lesson().ladder().metronome() == MetronomeScale.TRADITIONAL,
                journal.map(LessonJournal::name).orElse(""),
                journal.map(LessonJournal::stamp).orElse(""),
                journal.flatMap(one -> one.lastOf(today())).map(PracticeHandler::words).orElse(""),
                state.remark(),
                now,
                LessonTools.spots(now))));
  }

  private static String words(JournalEntry entry) {
    return entry
        .clean()
        .map(tempo -> text("practice.clean-at", mark(tempo) + entry.measures().phrase()))
        .orElse(entry.note());
  }

  /** What a bare number counts: what the tempo of the hearing does, or else that of the music. */
  private static BeatUnit beat(OpenLesson open) {
    return open.lesson()
        .hearing()
        .flatMap(Hearing::tempo)
        .orElseGet(() -> open.planned().orElseThrow().passage().tempo())
        .unit();
  }

  private static String mark(Tempo tempo) {
    return tempo.toString().replace("=", " = ");
  }

  private OpenLessons.State heard(String id, Map<String, String> form) {
    Optional<LocalDate> date = given(form, "date").map(PracticeHandler::date);
    Optional<Tempo> tempo =
        given(form, "tempo").map(mark -> Tempo.parse(mark, beat(lessons.planned(id).open())));
    Optional<Hearing> hearing =
        date.isEmpty() && tempo.isEmpty()
            ? Optional.empty()
            : Optional.of(new Hearing(date, tempo));
    LessonLadder ladder =
        new LessonLadder(
            Stream.of(DayOfWeek.values())
                .filter(day -> form.containsKey(field(day)))
                .collect(ImmutableSet.toImmutableSet()),
            form.containsKey("traditional") ? MetronomeScale.TRADITIONAL : MetronomeScale.EXACT);
    int revision = given(form, "revision").map(Ints::tryParse).orElse(-1);
    return lessons.change(
        id,
        revision,
        (now, plans) ->
            OpenLessons.step(now, now.lesson().withHearing(hearing).withLadder(ladder)));
  }

  private static ImmutableList<Tick> days(LessonLadder ladder) {
    return Stream.of(DayOfWeek.values())
        .map(
            day ->
                new Tick(
                    field(day),
                    day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH),
                    ladder.restDays().contains(day)))
        .collect(ImmutableList.toImmutableList());
  }

  private static String field(DayOfWeek day) {
    return "rest-" + LessonLadder.name(day);
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new FingeringException(text("practice.no-date", text), e);
    }
  }

  /** Writes a line into the journal of a lesson, which gets one if it has none. */
  private OpenLessons.State add(String id, Optional<Tempo> clean, Map<String, String> form) {
    OpenLesson open = lessons.kept(id);
    Passage passage = open.planned().orElseThrow().passage();
    MeasureSpan measures =
        given(form, "measures").map(MeasureSpan::parse).orElse(MeasureSpan.WHOLE);
    measures.measureIndices(passage);
    String usual = clean.isPresent() ? "" : text("practice.bad-day");
    JournalEntry entry =
        new JournalEntry(
            LocalDateTime.now(clock), clean, measures, given(form, "note").orElse(usual));
    OpenLessons.State state = withJournal(open);
    LessonJournal journal = LessonJournal.of(state.open().stored(), folder.path()).orElseThrow();
    String before = journal.stamp();
    journal.add(entry);
    boolean edited = given(form, "stamp").filter(stamp -> !stamp.equals(before)).isPresent();
    return edited
        ? new OpenLessons.State(state.open(), text("practice.edited", journal.name()))
        : state;
  }

  private OpenLessons.State withJournal(OpenLesson open) {
    if (open.lesson().journal().isPresent()) {
      return lessons.planned(open.id());
    }
    return lessons.change(
        open.id(),
        open.revision(),
        (now, plans) -> {
          Lesson lesson = now.lesson();
          return OpenLessons.step(
              now, lesson.withJournal(Optional.of(LessonJournal.fresh(now.stored()))));
        });
  }

  private OpenLessons.State takenBack(String id, Map<String, String> form) {
    OpenLessons.State state = lessons.planned(id);
    Optional<LessonJournal> journal = LessonJournal.of(state.open().stored(), folder.path());
    Optional<JournalEntry> entry = journal.flatMap(one -> one.lastOf(today()));
    if (journal.isEmpty() || entry.isEmpty() || !journal.get().stamp().equals(form.get("stamp"))) {
      return new OpenLessons.State(
          state.open(), text("practice.edited", journal.map(LessonJournal::name).orElse("")));
    }
    journal.get().takeBack(entry.get());
    return new OpenLessons.State(state.open(), text("practice.taken-back"));
  }

  private LocalDate today() {
    return LocalDate.now(clock);
  }

  private static Optional<String> given(Map<String, String> form, String name) {
    return Optional.ofNullable(form.get(name)).map(String::strip).filter(value -> !value.isEmpty());
  }
}
