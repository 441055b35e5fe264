package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.Ints;
import fingering.lesson.Lesson;
import fingering.page.LivePage;
import fingering.page.live.HomeView;
import fingering.tables.FingeringException;
import fingering.web.folder.Demo;
import fingering.web.folder.TeachersFolder;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The first page: the scores and lessons of the teacher's folder, and the demo for a teacher who
 * has none yet.
 */
final class HomeHandler implements Handler {
  private final Frames frames;
  private final TeachersFolder folder;
  private final Clock clock;

  HomeHandler(Frames frames, TeachersFolder folder, Clock clock) {
    this.frames = frames;
    this.folder = folder;
    this.clock = clock;
  }

  @Override
  public Optional<Reply> get(Request request) {
    return request.path().equals("/") ? Optional.of(home()) : Optional.empty();
  }

  @Override
  public Optional<Reply> post(Request request) {
    return request.path().equals("/demo") ? Optional.of(demo()) : Optional.empty();
  }

  private Reply demo() {
    Demo.save(folder.path(), LocalDate.now(clock));
    String id =
        folder.list().entries().stream()
            .filter(entry -> entry.name().equals(Demo.LESSON))
            .findFirst()
            .orElseThrow(
                () ->
                    new FingeringException(text("demo.taken", folder.path().resolve(Demo.LESSON))))
            .id();
    return Reply.of(Reply.EMPTY, "text/plain", "").with("HX-Redirect", "/open/" + id);
  }

  private Reply home() {
    TeachersFolder.Listing listing = folder.list();
    HomeView view =
        new HomeView(
            folder.path().toString(),
            entries(listing, false),
            entries(listing, true),
            listing.problems());
    return Reply.html(Reply.DONE, LivePage.home(frames.usual(), view));
  }

  /** The score, part, measures and student of a lesson. */
  private static String about(Lesson lesson) {
    String score =
        lesson
            .part()
            .map(part -> Ints.tryParse(part) == null ? part : text("home.number", part))
            .map(part -> text("home.part", lesson.score(), part))
            .orElse(lesson.score());
    String music =
        lesson.measures().map(measures -> text("home.of", score, measures)).orElse(score);
    return lesson.student().map(student -> text("home.for", music, student)).orElse(music);
  }

  private static ImmutableList<HomeView.Entry> entries(
      TeachersFolder.Listing listing, boolean lessons) {
    return listing.entries().stream()
        .filter(entry -> entry.lesson().isPresent() == lessons)
        .map(
            entry ->
                new HomeView.Entry(
                    "/open/" + entry.id(),
                    entry.name(),
                    entry.lesson().map(HomeHandler::about).orElse("")))
        .collect(ImmutableList.toImmutableList());
  }
}
