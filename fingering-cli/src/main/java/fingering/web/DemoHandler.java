package fingering.web;

import static fingering.page.view.PageText.text;

import fingering.tables.FingeringException;
import fingering.web.folder.Demo;
import fingering.web.folder.TeachersFolder;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/** The demo as first lesson of a teacher who has none yet. */
final class DemoHandler implements Handler {
  private final TeachersFolder folder;
  private final Clock clock;

  DemoHandler(TeachersFolder folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  @Override
  public Optional<Reply> get(Request request) {
    return Optional.empty();
  }

  @Override
  public Optional<Reply> post(Request request) {
    return request.path().equals("/demo") ? Optional.of(start()) : Optional.empty();
  }

  private Reply start() {
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
}
