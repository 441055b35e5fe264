package fingering.cli;

import fingering.musicxml.UnwritableScoreException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Where to print; shared by the commands. */
class OutputFile {
  @Option(
      names = "--output",
      paramLabel = "FILE",
      description = "Print into a new file instead of the terminal.")
  Optional<Path> output = Optional.empty();

  /** Refuses a file that is there already, before any work is done. */
  void check() {
    if (output.isPresent() && Files.exists(output.get())) {
      throw new UnwritableScoreException(
          output.get() + " exists already; give --output a new name.");
    }
  }

  /** Prints the text where the options say. */
  void print(String text, PrintWriter out) {
    if (output.isEmpty()) {
      out.print(text);
      out.flush();
      return;
    }
    Path target = output.get().toAbsolutePath();
    try {
      Path beside = Files.createTempFile(target.getParent(), ".fingering", ".part");
      try {
        Files.writeString(beside, text, StandardCharsets.UTF_8);
        Files.move(beside, target);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (FileAlreadyExistsException e) {
      throw new UnwritableScoreException(
          output.get() + " exists already; give --output a new name.");
    } catch (IOException e) {
      throw new UnwritableScoreException(
          output.get() + " cannot be written; check the folder and its permissions.");
    }
  }

  /** Whether to colour: only on a terminal, and never where NO_COLOR is set. */
  Style style() {
    return Style.of(output.isEmpty() && CommandLine.Help.Ansi.AUTO.enabled());
  }

  /** Columns of the terminal, 80 where it does not say. */
  static int columns() {
    String columns = System.getenv("COLUMNS");
    try {
      return columns == null ? 80 : Math.max(60, Math.min(200, Integer.parseInt(columns.strip())));
    } catch (NumberFormatException e) {
      return 80;
    }
  }
}
