package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Multimaps;
import com.google.common.primitives.Ints;
import fingering.lesson.LessonCircles;
import fingering.page.LessonTools;
import fingering.page.live.CirclesView;
import fingering.page.live.CirclesView.Group;
import fingering.page.live.CirclesView.Thing;
import fingering.page.view.PlaceLink;
import fingering.practice.Circle;
import fingering.tables.FingeringException;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import fingering.web.lesson.Planned;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What to circle in the part of a lesson. */
final class CircleHandler implements Handler {
  private static final Pattern ADDRESS =
      Pattern.compile("/open/([A-Za-z0-9_-]{24})/(circles|rings|ring)");

  private final TeachersFolder folder;
  private final OpenLessons lessons;
  private final LessonPages pages;

  CircleHandler(TeachersFolder folder, OpenLessons lessons, LessonPages pages) {
    this.folder = folder;
    this.lessons = lessons;
    this.pages = pages;
  }

  @Override
  public Optional<Reply> get(Request request) {
    Matcher address = ADDRESS.matcher(request.path());
    return address.matches() && address.group(2).equals("circles")
        ? lessons
            .opened(address.group(1), folder::file)
            .map(open -> list(lessons.planned(open.id()).open()))
        : Optional.empty();
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    Matcher address = ADDRESS.matcher(request.path());
    if (!address.matches() || address.group(2).equals("circles")) {
      return Optional.empty();
    }
    Map<String, String> form = request.form();
    boolean on = form.containsKey("on");
    int revision = Optional.ofNullable(form.get("revision")).map(Ints::tryParse).orElse(-1);
    OpenLessons.Change change =
        (now, plans) -> {
          LessonCircles circles = now.lesson().circles();
          LessonCircles next =
              address.group(2).equals("rings")
                  ? circles.showing(on)
                  // Who ticks something wants to see it.
                  : circles.with(name(form, plans.get()), on, plans.get().circles()).showing(true);
          return OpenLessons.step(now, now.lesson().withCircles(next));
        };
    return lessons
        .opened(address.group(1), folder::file)
        .map(
            open ->
                pages.answer(lessons.change(open.id(), revision, change), form, request.page()));
  }

  private static String name(Map<String, String> form, Planned planned) {
    String name = form.getOrDefault("name", "");
    boolean known =
        planned.circles().stream()
            .anyMatch(circle -> circle.name().equals(name) || circle.kind().word().equals(name));
    if (!known) {
      throw new FingeringException(text("circles.gone"));
    }
    return name;
  }

  private static Reply list(OpenLesson open) {
    LessonCircles circles = open.lesson().circles();
    ImmutableList.Builder<Group> groups = ImmutableList.builder();
    Multimaps.asMap(Multimaps.index(open.planned().orElseThrow().circles(), Circle::kind))
        .forEach(
            (kind, found) -> {
              ImmutableList<Thing> things = things(found, circles);
              groups.add(
                  new Group(
                      kind.word(),
                      kind.heading(),
                      (int) things.stream().filter(Thing::circled).count(),
                      things));
            });
    return Reply.html(
        Reply.DONE,
        LessonTools.circles(new CirclesView(open.address(), circles.shown(), groups.build())));
  }

  /** The things of one kind; those at one place are ticked together. */
  private static ImmutableList<Thing> things(List<Circle> found, LessonCircles circles) {
    Map<String, List<Circle>> places =
        found.stream()
            .collect(Collectors.groupingBy(Circle::name, LinkedHashMap::new, Collectors.toList()));
    return places.entrySet().stream()
        .map(
            place ->
                new Thing(
                    place.getKey(),
                    PlaceLink.beat(place.getValue().get(0).place(), true),
                    place.getValue().stream().map(Circle::text).collect(Collectors.joining("; ")),
                    circles.has(place.getValue().get(0))))
        .collect(ImmutableList.toImmutableList());
  }
}
