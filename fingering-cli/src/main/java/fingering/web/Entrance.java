package fingering.web;

import fingering.web.folder.Demo;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import fingering.web.running.Wanted;
import java.nio.file.Path;
import java.util.Optional;

/** Opens what a start of the program wants, and makes the addresses that show it. */
final class Entrance {
  private final Gate gate;
  private final Secrets secrets;
  private final OpenLessons lessons;
  private final DroppedFiles dropped;
  private final TeachersFolder folder;

  Entrance(
      Gate gate,
      Secrets secrets,
      OpenLessons lessons,
      DroppedFiles dropped,
      TeachersFolder folder) {
    this.gate = gate;
    this.secrets = secrets;
    this.lessons = lessons;
    this.dropped = dropped;
    this.folder = folder;
  }

  /**
   * A path that shows what is wanted, once and within a minute.
   *
   * @throws fingering.tables.FingeringException if it cannot be read; the message is one sentence
   */
  String path(Wanted wanted) {
    Optional<OpenLesson> lesson =
        wanted
            .file()
            .map(this::opened)
            .or(
                () ->
                    wanted.demo() && folder.list().empty()
                        ? Optional.of(demo())
                        : Optional.empty());
    return Routes.ENTER
        + "?token="
        + gate.token()
        + lesson.map(open -> "&score=" + open.id()).orElse("");
  }

  private OpenLesson opened(Path file) {
    return lessons.open(secrets.fresh(), file, file.toString(), true);
  }

  /** The demo without a place in the folder: nothing is saved unless the teacher wants it. */
  private OpenLesson demo() {
    DroppedFiles.Dropped demo = dropped.keep(Demo.SCORE, Demo.score());
    return lessons.open(demo.id(), demo.path(), demo.name(), true);
  }
}
