package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.primitives.Ints;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.music.BeatUnit;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.page.LivePage;
import fingering.page.NoteWays;
import fingering.page.live.ConflictView;
import fingering.page.live.DemandsView.Chip;
import fingering.page.live.NoteView;
import fingering.plan.Alternative;
import fingering.plan.InfeasibleBriefException;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import fingering.tables.Instruments;
import fingering.web.folder.StudentsFolder;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.DemandChips;
import fingering.web.lesson.FittingDemands;
import fingering.web.lesson.LessonEdit;
import fingering.web.lesson.LessonMusic;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import fingering.web.lesson.Planned;
import fingering.web.lesson.SlurEdit;
import fingering.web.typed.TypedFiles;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lessons that are opened, and everything that is chosen in them. */
final class LessonHandler implements Handler {
  private static final Pattern OPEN = Pattern.compile("/open/([A-Za-z0-9_-]{24})(?:/([a-z]+))?");

  /** The ways to play a note that are listed. */
  private static final int WAYS = 6;

  /** The field that names a demand to drop for the sake of a new one. */
  private static final String DROPPED = "dropped";

  private final Secrets secrets;
  private final TeachersFolder folder;
  private final StudentsFolder students;
  private final OpenLessons lessons;
  private final LessonPages pages;

  LessonHandler(
      Secrets secrets,
      TeachersFolder folder,
      StudentsFolder students,
      OpenLessons lessons,
      LessonPages pages) {
    this.secrets = secrets;
    this.students = students;
    this.folder = folder;
    this.lessons = lessons;
    this.pages = pages;
  }

  @Override
  public Optional<Reply> get(Request request) {
    Matcher address = OPEN.matcher(request.path());
    if (!address.matches()) {
      return Optional.empty();
    }
    Optional<OpenLesson> opened = lessons.opened(address.group(1), folder::file);
    if (opened.isEmpty()) {
      return Optional.empty();
    }
    OpenLesson open = opened.get();
    if (address.group(2) == null) {
      return Optional.of(pages.page(open, edit(open)));
    }
    ImmutableMap<String, String> query = request.query();
    return switch (address.group(2)) {
      case "plans" -> Optional.of(pages.answer(lessons.planned(open.id()), query, request.page()));
      case "rest" ->
          Optional.of(pages.rest(lessons.planned(open.id()).open(), query, request.page()));
      case "note" -> Optional.of(note(lessons.planned(open.id()).open(), query));
      case "locked" -> Optional.of(locked(lessons.planned(open.id()).open()));
      case "demands" -> Optional.of(demands(lessons.planned(open.id()).open()));
      default -> Optional.empty();
    };
  }

  /** Where the notes of a typed score of the folder are edited; empty for others. */
  private String edit(OpenLesson open) {
    return folder
        .idOf(open.stored().scoreFile())
        .filter(id -> TypedFiles.typed(open.stored().lesson().score()))
        .map(id -> "/type?score=" + id)
        .orElse("");
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    Matcher address = OPEN.matcher(request.path());
    if (!address.matches() || address.group(2) == null) {
      return Optional.empty();
    }
    Optional<OpenLesson> open = lessons.opened(address.group(1), folder::file);
    if (open.isEmpty()) {
      return Optional.empty();
    }
    String id = open.get().id();
    ImmutableMap<String, String> form = request.form();
    int revision = Optional.ofNullable(form.get("revision")).map(Ints::tryParse).orElse(-1);
    if (address.group(2).equals("copy")) {
      OpenLesson copy = lessons.copy(lessons.planned(id).open(), secrets.fresh());
      return Optional.of(
          Reply.of(Reply.EMPTY, "text/html", "").with("HX-Redirect", copy.address()));
    }
    Optional<OpenLessons.Change> change =
        address.group(2).equals("choice") ? Optional.empty() : change(address.group(2), form);
    if (change.isEmpty() && !address.group(2).equals("choice")) {
      return Optional.empty();
    }
    try {
      OpenLessons.State state =
          change.isPresent()
              ? lessons.change(id, revision, change.get())
              : chosen(id, revision, form);
      return Optional.of(pages.answer(state, form, request.page()));
    } catch (InfeasibleBriefException e) {
      return Optional.of(conflict(request.path(), id, form, e));
    }
  }

  /** What a request changes; empty if there is no such change. */
  private static Optional<OpenLessons.Change> change(String kind, Map<String, String> form) {
    return switch (kind) {
      case "plan" -> Optional.of(edit(form, edit -> edit.choosing(field(form, "plan"))));
      case "below" ->
          Optional.of(
              (now, plans) -> OpenLessons.step(now, now.lesson().withBelow(given(form, "below"))));
      case "fix" ->
          Optional.of(
              edit(
                  form,
                  edit ->
                      edit.fixing(moment(form), Splitter.on(';').splitToList(field(form, "way")))));
      case "free" -> Optional.of(edit(form, edit -> edit.freeing(moment(form))));
      case "demand" -> Optional.of(edit(form, edit -> demanding(edit, form)));
      case "drop" ->
          Optional.of(edit(form, edit -> edit.dropping(field(form, "key"), field(form, "value"))));
      case "clear" ->
          Optional.of(edit(form, edit -> edit.freeing(number(form, "from"), number(form, "to"))));
      case "slur" -> Optional.of(slurs(edit -> edit.slurring(moment(form), number(form, "to"))));
      case "separate" -> Optional.of(slurs(edit -> edit.separating(moment(form))));
      case "printed" -> Optional.of(slurs(edit -> edit.asPrinted(field(form, "place"))));
      case "undo" -> Optional.of((now, plans) -> OpenLessons.undone(now));
      case "redo" -> Optional.of((now, plans) -> OpenLessons.redone(now));
      default -> Optional.empty();
    };
  }

  /** A change of the chosen plan, after a demand was dropped for its sake. */
  private static OpenLessons.Change edit(
      Map<String, String> form, Function<LessonEdit, Lesson> edit) {
    return (now, plans) -> {
      Planned planned = plans.get();
      Lesson before = now.lesson();
      Optional<List<String>> dropped =
          Optional.ofNullable(form.get(DROPPED)).map(Splitter.on('=').limit(2)::splitToList);
      if (dropped.isPresent() && dropped.get().size() == 2) {
        before =
            new LessonEdit(before, planned.passage(), planned.plan())
                .dropping(dropped.get().get(0), dropped.get().get(1));
      }
      return OpenLessons.step(
          now, edit.apply(new LessonEdit(before, planned.passage(), planned.plan())));
    };
  }

  private static OpenLessons.Change slurs(Function<SlurEdit, Lesson> edit) {
    return (now, plans) ->
        OpenLessons.step(now, edit.apply(new SlurEdit(now.lesson(), plans.get().passage())));
  }

  private static Lesson demanding(LessonEdit edit, Map<String, String> form) {
    String span = LessonEdit.span(edit.passage(), number(form, "from"), number(form, "to"));
    String key = field(form, "key");
    if (!key.equals("stay") && !key.equals("strings") && !key.equals("avoid")) {
      throw new FingeringException(text("live.unknown"));
    }
    return edit.demanding(key, field(form, "value") + "@" + span);
  }

  /** Chooses other music or another student. Demands on other music are left out. */
  private OpenLessons.State chosen(String id, int revision, Map<String, String> form) {
    return lessons.choose(
        id,
        revision,
        (now, plans) -> {
          Optional<Passage> before = LessonMusic.of(now);
          BeatUnit beat = before.map(music -> music.tempo().unit()).orElse(BeatUnit.QUARTER);
          Lesson wanted = chosen(now, beat, form);
          Lesson fitting =
              before.map(music -> FittingDemands.in(wanted, now, music)).orElse(wanted);
          OpenLessons.Next next = OpenLessons.step(now, fitting);
          return fitting.equals(wanted) ? next : next.saying(text("open.fewer-demands"));
        });
  }

  private Lesson chosen(OpenLesson now, BeatUnit beat, Map<String, String> form) {
    Optional<String> student = given(form, "student");
    Optional<String> part = given(form, "part");
    return now.lesson()
        .withStudent(
            student.isPresent()
                ? student
                    .flatMap(students::student)
                    .map(entry -> entry.nameIn(now.stored()))
                    // A student who is in no menu stays.
                    .or(now.lesson()::student)
                : Optional.empty())
        .withPart(part)
        .withInstrument(given(form, "instrument").map(Instruments.standard()::named))
        // Places in another part are other notes.
        .withSlurs(part.equals(now.lesson().part()) ? now.lesson().slurs() : SlurChanges.NONE)
        .withMeasures(given(form, "measures"))
        .withTempo(given(form, "tempo").map(text -> Tempo.parse(text, beat)));
  }

  private static Optional<String> given(Map<String, String> form, String name) {
    return Optional.ofNullable(form.get(name)).map(String::strip).filter(value -> !value.isEmpty());
  }

  private static String field(Map<String, String> form, String name) {
    return given(form, name).orElseThrow(() -> new FingeringException(text("live.unknown")));
  }

  private static int number(Map<String, String> form, String name) {
    return Optional.ofNullable(Ints.tryParse(field(form, name)))
        .orElseThrow(() -> new FingeringException(text("live.unknown")));
  }

  private static int moment(Map<String, String> form) {
    return number(form, "moment");
  }

  /** The ways to play a note. */
  private static Reply note(OpenLesson open, Map<String, String> query) {
    Planned planned = open.planned().orElseThrow();
    ImmutableList<Moment> moments = planned.passage().moments();
    int m = moment(query);
    if (m < 0 || m >= moments.size()) {
      throw new FingeringException(text("note.none"));
    }
    Moment moment = moments.get(m);
    Optional<LessonPlan> chosen = open.lesson().chosen();
    Optional<String> beat = LessonEdit.beat(planned.passage(), m);
    List<String> fixes =
        chosen.map(plan -> List.copyOf(plan.demands().get("fix"))).orElse(List.of());
    boolean locked =
        fixes.stream()
            .anyMatch(
                value -> LessonEdit.fixed(planned.passage(), value).stream().anyMatch(f -> f == m));
    Alternative now = new Alternative(m, planned.plan());
    return Reply.html(
        Reply.DONE,
        LivePage.note(
            new NoteView(
                open.address(),
                m,
                text(
                    "note.place",
                    moment.place().measure(),
                    moment.place().beatText(),
                    NoteWays.names(moment.starting())),
                locked,
                beat.isPresent() ? "" : moment.grace() ? text("note.grace") : text("note.twice"),
                SlurEdit.at(planned.passage(), m),
                NoteWays.of(ways(planned, chosen, m, locked), now))));
  }

  /** The ways to play a note, without demands on this note alone. */
  private static ImmutableList<Alternative> ways(
      Planned planned, Optional<LessonPlan> chosen, int m, boolean locked) {
    return planned
        .advice()
        .planner()
        .alternatives(
            locked
                ? planned
                    .advice()
                    .plan(
                        chosen
                            .orElseThrow()
                            .without(
                                (key, value) ->
                                    key.equals("fix")
                                        && LessonEdit.fixed(planned.passage(), value).stream()
                                            .anyMatch(fixed -> fixed == m)),
                        Cancellation.NEVER)
                : planned.plan(),
            m,
            WAYS);
  }

  private static Reply locked(OpenLesson open) {
    Planned planned = open.planned().orElseThrow();
    return Reply.html(
        Reply.DONE,
        LivePage.chips(open.address(), DemandChips.fixed(planned, open.lesson().chosen())));
  }

  private static Reply demands(OpenLesson open) {
    Planned planned = open.planned().orElseThrow();
    return Reply.html(
        Reply.DONE,
        LivePage.demands(DemandChips.view(open.address(), planned, open.lesson().chosen(), true)));
  }

  /** Which demands rule out a change, and which of them could be dropped for it. */
  private Reply conflict(
      String path, String id, ImmutableMap<String, String> form, InfeasibleBriefException e) {
    List<Chip> others = new ArrayList<>();
    OpenLesson open = lessons.planned(id).open();
    Planned planned = open.planned().orElseThrow();
    for (Chip chip : DemandChips.all(planned, open.lesson().chosen())) {
      boolean conflicts =
          planned.advice().planner().parser().read(chip.key(), chip.value()).stream()
              .anyMatch(e.conflicting()::contains);
      if (conflicts) {
        others.add(chip);
      }
    }
    ImmutableMap.Builder<String, String> fields = ImmutableMap.builder();
    form.forEach(
        (name, value) -> {
          if (!name.equals("revision") && !name.equals(DROPPED)) {
            fields.put(name, value);
          }
        });
    return Reply.html(
            Reply.CONFLICT,
            LivePage.conflict(
                new ConflictView(
                    path,
                    fields.buildOrThrow(),
                    String.valueOf(e.getMessage()),
                    ImmutableList.copyOf(others))))
        .with("HX-Retarget", "#trouble")
        .with("HX-Reswap", "innerHTML");
  }
}
