package fingering.web;

import fingering.web.folder.ScoreName;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import java.io.IOException;
import java.util.Optional;

/** Takes files that are dropped on a page. */
final class DropHandler implements Handler {
  private final DroppedFiles dropped;
  private final OpenLessons lessons;

  DropHandler(DroppedFiles dropped, OpenLessons lessons) {
    this.dropped = dropped;
    this.lessons = lessons;
  }

  @Override
  public Optional<Reply> get(Request request) {
    return Optional.empty();
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    if (!request.path().equals("/scores")) {
      return Optional.empty();
    }
    byte[] body = request.body();
    String name = Request.decoded(request.header("X-Name").orElse(""));
    ScoreName kind = ScoreName.of(name);
    if (!kind.readable()) {
      return Optional.of(
          Reply.html(Reply.UNUSABLE, kind.adviceWithLink()).with("HX-Retarget", "#trouble"));
    }
    DroppedFiles.Dropped file = dropped.keep(name, body);
    OpenLesson open = lessons.open(file.id(), file.path(), file.name(), true);
    return Optional.of(Reply.to(Reply.CREATED, open.address()));
  }
}
