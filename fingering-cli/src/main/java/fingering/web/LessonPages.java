package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.cache.Cache;
import com.google.common.cache.CacheBuilder;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.primitives.Ints;
import fingering.engraving.drawing.Circled;
import fingering.lesson.Lesson;
import fingering.lesson.LessonCircles;
import fingering.lesson.LessonPlan;
import fingering.lesson.PlanName;
import fingering.music.Tempo;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.page.LivePage;
import fingering.page.PageContent;
import fingering.page.live.AnswerView;
import fingering.page.live.AnswerView.Fields;
import fingering.page.live.AnswerView.PlanChoice;
import fingering.page.live.DemandsView;
import fingering.page.live.OpenView;
import fingering.page.live.OpenView.Option;
import fingering.page.music.Lanes;
import fingering.page.music.LineDrawer;
import fingering.page.music.Rings;
import fingering.plan.Plan;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import fingering.tables.Position;
import fingering.tables.RomanNumeral;
import fingering.web.folder.StudentsFolder;
import fingering.web.lesson.DemandChips;
import fingering.web.lesson.LessonEdit;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import fingering.web.lesson.Planned;
import fingering.web.lesson.SlurEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The page of an open lesson, and the answers that replace parts of it. */
final class LessonPages {
  /** The width of a window that does not say its own, in pixels. */
  private static final int USUAL_WINDOW = 1200;

  /** The narrowest window, in pixels, in which long lines can be read. */
  private static final int WIDE_WINDOW = 700;

  /** The event of a page whose plans have changed. */
  private static final String REPLANNED = "replanned";

  /** The lines that a new page is sent at once: more than a screen is high. */
  private static final int FIRST_LINES = 10;

  /** The pages whose music is remembered. */
  private static final int PAGES = 64;

  /** What is sent for a student who is not in the folder. */
  private static final String OTHER = "-";

  /** The highest position in the menu for measures. */
  private static final int HIGHEST = 7;

  private final Frames frames;
  private final StudentsFolder students;
  private final Cache<String, Shown> shown = CacheBuilder.newBuilder().maximumSize(PAGES).build();

  LessonPages(Frames frames, StudentsFolder students) {
    this.frames = frames;
    this.students = students;
  }

  /**
   * Music that a page shows.
   *
   * @param lesson the id of the lesson
   * @param drawer drew it
   * @param plan the plan whose fingers it shows above the staff
   * @param lines the lines by their numbers
   */
  private record Shown(
      String lesson, LineDrawer drawer, Plan plan, ImmutableMap<Integer, LineDrawer.Line> lines) {
    /** The lines of some music that the page does not show as they are. */
    List<LineDrawer.Line> missing(LineDrawer other, List<LineDrawer.Line> music) {
      Map<Integer, LineDrawer.Line> known = linesOf(other);
      return music.stream().filter(line -> !line.equals(known.get(line.number()))).toList();
    }

    /** The lines that show music of a drawer. */
    ImmutableMap<Integer, LineDrawer.Line> linesOf(LineDrawer other) {
      return other == drawer ? lines : ImmutableMap.of();
    }
  }

  /**
   * The page without plans, which it requests once it is shown.
   *
   * @param edit where its notes are edited; empty if they were not typed
   */
  Reply page(OpenLesson open, String edit) {
    Lesson lesson = open.lesson();
    OpenView view =
        new OpenView(
            open.address(),
            open.revision(),
            parts(open.score(), lesson.part()),
            instruments(lesson),
            students(open),
            lesson.measures().orElse(""),
            lesson.tempo().map(Tempo::toString).orElse(""),
            positions(),
            strings(),
            LivePage.shapes(),
            edit);
    return Reply.html(Reply.DONE, LivePage.open(frames.titled(open.title()), view));
  }

  private Fields fields(OpenLesson open) {
    Lesson lesson = open.lesson();
    return new Fields(
        value(parts(open.score(), lesson.part())),
        value(instruments(lesson)),
        value(students(open)),
        lesson.measures().orElse(""),
        lesson.tempo().map(Tempo::toString).orElse(""));
  }

  private static String value(List<Option> options) {
    return options.stream().filter(Option::chosen).map(Option::value).findFirst().orElse("");
  }

  private static ImmutableList<Option> parts(Score score, Optional<String> chosen) {
    Optional<PartInfo> part = chosen.map(score::part);
    return score.parts().stream()
        .map(
            info ->
                new Option(
                    Integer.toString(info.number()),
                    info.toString(),
                    part.filter(info::equals).isPresent()))
        .collect(ImmutableList.toImmutableList());
  }

  private static ImmutableList<Option> instruments(Lesson lesson) {
    Optional<String> chosen = lesson.instrument().map(Instrument::id);
    return Stream.concat(
            Stream.of(new Option("", text("open.as-part"), chosen.isEmpty())),
            Instruments.standard().all().stream()
                .map(one -> new Option(one.id(), one.name(), chosen.equals(Optional.of(one.id())))))
        .collect(ImmutableList.toImmutableList());
  }

  /** The students to choose from: none, those of the folder, and another one of the lesson. */
  private ImmutableList<Option> students(OpenLesson open) {
    Optional<StudentsFolder.Entry> chosen = students.of(open.stored());
    Optional<String> named = open.lesson().student();
    ImmutableList.Builder<Option> options = ImmutableList.builder();
    options.add(new Option("", text("open.no-student"), named.isEmpty()));
    for (StudentsFolder.Entry entry : students.list().students()) {
      boolean same = chosen.filter(one -> one.id().equals(entry.id())).isPresent();
      options.add(new Option(entry.id(), entry.name(), same));
    }
    if (chosen.isEmpty() && named.isPresent()) {
      options.add(new Option(OTHER, named.get(), true));
    }
    return options.build();
  }

  private static ImmutableList<Option> positions() {
    return Position.range(Position.HALF, Position.of(HIGHEST)).stream()
        .map(
            position ->
                new Option(
                    position.toString(), position.display(), position.equals(Position.THIRD)))
        .collect(ImmutableList.toImmutableList());
  }

  private static ImmutableList<Option> strings() {
    return IntStream.rangeClosed(1, 4)
        .mapToObj(RomanNumeral::of)
        .map(string -> new Option(string, string, false))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * The answer to a request.
   *
   * @param state the state to show
   * @param fields the fields of the request: the width of the window, and the lines on screen
   * @param page the token of the page that asks
   */
  Reply answer(OpenLessons.State state, Map<String, String> fields, String page) {
    OpenLesson open = state.open();
    Planned planned = open.planned().orElseThrow();
    Lanes lanes = planned.lanes();
    LineDrawer drawer = planned.drawer(window(fields) < WIDE_WINDOW);
    ImmutableList<LineDrawer.Line> lines = drawer.lines(lanes, rings(open, planned));
    Optional<Shown> before = shown(page, open, drawer);
    List<LineDrawer.Line> changed = before.map(old -> old.missing(drawer, lines)).orElse(lines);
    List<LineDrawer.Line> now =
        before.isPresent()
            ? onScreen(changed, drawer.ids(), fields)
            : changed.subList(0, Math.min(FIRST_LINES, changed.size()));
    remember(page, open, drawer, planned.plan(), before, now);
    PageContent content = planned.advice().content();
    return Reply.html(
            Reply.DONE,
            LivePage.answer(
                new AnswerView(
                    open.address(),
                    open.revision(),
                    state.remark(),
                    content.title(),
                    content.verdict(),
                    content.about(),
                    fields(open),
                    plans(open, planned),
                    planned.chosen().isEmpty() || planned.plan().sameFingering(content.main())
                        ? ""
                        : text(
                            "plan.shown",
                            planned.plan().name(),
                            planned.advice().line(planned.plan())),
                    planned.advice().remarks(planned.plan()),
                    demands(open, planned),
                    SlurEdit.chips(open.lesson().slurs()),
                    below(open, planned),
                    lanes.signs(),
                    content.care(),
                    open.saved() ? open.name() : "",
                    !open.history().past().isEmpty(),
                    !open.history().future().isEmpty(),
                    before
                        .map(old -> changes(old.plan(), planned.plan()))
                        .orElse(ImmutableList.of()),
                    locked(open, planned),
                    before.isEmpty() ? drawer.ids() : ImmutableList.of(),
                    now.size() < changed.size(),
                    drawer.draw(now))))
        .with("HX-Trigger", REPLANNED);
  }

  /** The rings in the music; none unless the lesson shows them. */
  private static ImmutableList<Circled> rings(OpenLesson open, Planned planned) {
    LessonCircles circles = open.lesson().circles();
    return circles.shown()
        ? Rings.of(planned.passage(), circles.of(planned.circles()))
        : ImmutableList.of();
  }

  /** The lines that a page has not been sent yet. */
  Reply rest(OpenLesson open, Map<String, String> fields, String page) {
    Planned planned = open.planned().orElseThrow();
    LineDrawer drawer = planned.drawer(window(fields) < WIDE_WINDOW);
    ImmutableList<LineDrawer.Line> lines = drawer.lines(planned.lanes(), rings(open, planned));
    Optional<Shown> before = shown(page, open, drawer);
    List<LineDrawer.Line> missing = before.map(old -> old.missing(drawer, lines)).orElse(List.of());
    remember(page, open, drawer, planned.plan(), before, missing);
    return Reply.html(Reply.DONE, LivePage.lines(drawer.draw(missing)));
  }

  /** What a page shows, if it can show the music of a drawer by replacing lines. */
  private Optional<Shown> shown(String page, OpenLesson open, LineDrawer drawer) {
    return Optional.ofNullable(shown.getIfPresent(page))
        .filter(old -> old.lesson().equals(open.id()) && old.drawer().ids().equals(drawer.ids()));
  }

  private void remember(
      String page,
      OpenLesson open,
      LineDrawer drawer,
      Plan plan,
      Optional<Shown> before,
      List<LineDrawer.Line> sent) {
    Map<Integer, LineDrawer.Line> known = new HashMap<>();
    before.ifPresent(old -> known.putAll(old.linesOf(drawer)));
    sent.forEach(line -> known.put(line.number(), line));
    shown.put(page, new Shown(open.id(), drawer, plan, ImmutableMap.copyOf(known)));
  }

  /** Of the lines that have changed, those on screen. */
  private static List<LineDrawer.Line> onScreen(
      List<LineDrawer.Line> changed, List<String> ids, Map<String, String> fields) {
    int first = ids.indexOf(fields.getOrDefault("first", ""));
    int last = ids.indexOf(fields.getOrDefault("last", ""));
    return first < 0 || last < first
        ? changed
        : changed.stream().filter(line -> line.number() >= first && line.number() <= last).toList();
  }

  private static List<Pitch> pitches(Plan plan) {
    return plan.notes().stream().map(note -> note.note().written()).toList();
  }

  /** The moments at which two plans differ; none if they are of different notes. */
  private static ImmutableList<Integer> changes(Plan before, Plan now) {
    if (!pitches(before).equals(pitches(now))) {
      return ImmutableList.of();
    }
    return IntStream.range(0, now.notes().size())
        .filter(i -> !now.notes().get(i).sameFingering(before.notes().get(i)))
        .map(i -> now.notes().get(i).moment())
        .distinct()
        .boxed()
        .collect(ImmutableList.toImmutableList());
  }

  /** The moments whose fingering the chosen plan fixes. */
  private static ImmutableList<Integer> locked(OpenLesson open, Planned planned) {
    return open.lesson().chosen().stream()
        .flatMap(plan -> plan.demands().get("fix").stream())
        .flatMapToInt(value -> LessonEdit.fixed(planned.passage(), value).stream())
        .boxed()
        .distinct()
        .collect(ImmutableList.toImmutableList());
  }

  private static ImmutableList<PlanChoice> plans(OpenLesson open, Planned planned) {
    Map<String, String> names = names(open, planned);
    String shownName =
        open.lesson().chosen().map(LessonPlan::name).orElseGet(() -> planned.plan().name());
    return choices(names, names.containsKey(shownName) ? shownName : value(planned.plan()));
  }

  /** The plans for below the staff: the one that the verdict weighs, any other one, or none. */
  private static ImmutableList<PlanChoice> below(OpenLesson open, Planned planned) {
    String chosen = open.lesson().below().orElse("");
    Map<String, String> names = new LinkedHashMap<>();
    names.put(
        "",
        planned
            .rival()
            .filter(plan -> chosen.isEmpty())
            .map(plan -> text("plan.weighed-name", plan.name()))
            .orElseGet(() -> text("plan.weighed")));
    names.putAll(names(open, planned));
    names.put(Lesson.NONE_BELOW, text("plan.none-below"));
    return choices(names, names.containsKey(chosen) ? chosen : "");
  }

  private static ImmutableList<PlanChoice> choices(Map<String, String> names, String chosen) {
    return names.entrySet().stream()
        .map(
            entry ->
                new PlanChoice(entry.getKey(), entry.getValue(), entry.getKey().equals(chosen)))
        .collect(ImmutableList.toImmutableList());
  }

  /** The names of the plans, by what is sent for them. */
  private static Map<String, String> names(OpenLesson open, Planned planned) {
    Map<String, String> names = new LinkedHashMap<>();
    for (Plan plan : planned.advice().content().comparison().plans()) {
      names.put(value(plan), plan.name());
    }
    names.putIfAbsent(PlanName.FREE.word(), text("plan.free"));
    for (LessonPlan plan : ordered(open.lesson().plans())) {
      names.putIfAbsent(plan.name(), plan.name());
    }
    return names;
  }

  private static String value(Plan plan) {
    return PlanName.named(plan).filter(PlanName::known).map(PlanName::word).orElse(plan.name());
  }

  /** The plans in an order that does not change when another one is chosen. */
  private static List<LessonPlan> ordered(List<LessonPlan> plans) {
    List<LessonPlan> ordered = new ArrayList<>(plans);
    ordered.sort(Comparator.comparing(LessonPlan::name));
    return ordered;
  }

  private static DemandsView demands(OpenLesson open, Planned planned) {
    return DemandChips.view(open.address(), planned, open.lesson().chosen(), false);
  }

  private static int window(Map<String, String> fields) {
    return Optional.ofNullable(fields.get("window")).map(Ints::tryParse).orElse(USUAL_WINDOW);
  }
}
