package fingering.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A teacher's folder: the score <i>Rain on the Mill</i>, and two students. */
final class MillFolder {
  private static final Path EXAMPLES = Session.DEMO.resolveSibling("../examples");

  private MillFolder() {}

  /** Copies the files into an empty folder. */
  static void fill(Path folder) throws IOException {
    Files.copy(EXAMPLES.resolve("mill.musicxml"), folder.resolve("mill.musicxml"));
    Files.createDirectory(folder.resolve("students"));
    for (String student : List.of("imke.yaml", "jonte.yaml")) {
      Files.copy(EXAMPLES.resolve(student), folder.resolve("students").resolve(student));
    }
  }
}
