package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.page.CheckLivePage;
import fingering.page.live.CheckView;
import fingering.page.live.StudentView.Choice;
import fingering.playability.CheckLevel;
import fingering.playability.CheckRequest;
import fingering.playability.Forces;
import fingering.playability.ScoreCheck;
import fingering.playability.check.Checker;
import fingering.tables.FingeringException;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What players at a level cannot play in all string parts of an open score. */
final class CheckHandler implements Handler {
  private static final Pattern CHECK = Pattern.compile("/open/([A-Za-z0-9_-]{24})/check(/found)?");

  /** The level that is chosen first, as on the command line. */
  private static final String USUAL = "common-practice";

  private final Frames frames;
  private final TeachersFolder teachers;
  private final OpenLessons lessons;

  CheckHandler(Frames frames, TeachersFolder teachers, OpenLessons lessons) {
    this.frames = frames;
    this.teachers = teachers;
    this.lessons = lessons;
  }

  @Override
  public Optional<Reply> get(Request request) {
    Matcher address = CHECK.matcher(request.path());
    Optional<OpenLesson> open =
        address.matches() ? lessons.opened(address.group(1), teachers::file) : Optional.empty();
    return open.map(
        score ->
            Reply.html(
                Reply.DONE,
                address.group(2) == null ? page(score) : found(score, request.query())));
  }

  @Override
  public Optional<Reply> post(Request request) {
    return Optional.empty();
  }

  private String page(OpenLesson open) {
    return CheckLivePage.page(
        frames.titled(text("check.title", open.title())),
        new CheckView(
            open.address() + "/check",
            open.address(),
            CheckLevel.presets().stream()
                .map(
                    name ->
                        new Choice(
                            name,
                            CheckLivePage.players(CheckLevel.preset(name)),
                            name.equals(USUAL)))
                .collect(ImmutableList.toImmutableList()),
            ImmutableList.of(
                new Choice("", text("check.by-score"), true),
                new Choice(Forces.SECTION.id(), text("check.by-section"), false),
                new Choice(Forces.ONE_PLAYER.id(), text("check.by-one"), false))));
  }

  private static String found(OpenLesson open, Map<String, String> query) {
    CheckLevel level = CheckLevel.preset(query.getOrDefault("level", USUAL));
    String by = query.getOrDefault("by", "");
    CheckRequest request =
        Stream.of(Forces.values())
            .filter(forces -> forces.id().equals(by))
            .findFirst()
            .map(CheckRequest.WHOLE::withForces)
            .orElse(CheckRequest.WHOLE);
    ScoreCheck check = Checker.of(level).check(open.score(), request);
    if (check.parts().isEmpty()) {
      throw new FingeringException(text("check.no-strings"));
    }
    return CheckLivePage.found(
        String.valueOf(open.stored().scoreFile().getFileName()), open.score(), check, request);
  }
}
