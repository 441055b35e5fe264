package fingering.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The pages of an audition and of what to circle, to look at. */
public final class SheetPages {
  private SheetPages() {}

  /** The page of a command, {@code audition} or {@code marks}, as a file. */
  public static Path of(String command, Path folder) throws IOException {
    Path page = folder.resolve(command + ".html");
    return Files.exists(page) ? page : Files.writeString(page, html(command));
  }

  static String html(String command) {
    Path file =
        command.equals("marks") ? Session.DEMO : Session.DEMO.resolveSibling("hearing.yaml");
    return Session.of(command, file, "--format", "html").succeeded().out();
  }
}
