package fingering.cli.file;

import fingering.cli.terminal.PrintingStoppedException;
import fingering.files.TextFiles;
import fingering.musicxml.UnwritableScoreException;
import fingering.musicxml.file.ScoreFile;
import java.io.Closeable;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** Text that is printed in pieces, to the terminal or to a new file. */
public final class OutputStreamer implements Closeable {
  private record Unfinished(Path target, Path part, Writer writer) {}

  private final PrintWriter terminal;
  private final Optional<Unfinished> file;

  private OutputStreamer(PrintWriter terminal, Optional<Unfinished> file) {
    this.terminal = terminal;
    this.file = file;
  }

  /**
   * Starts the output.
   *
   * @param target the file to print to, which appears when the output is {@link #finish finished};
   *     empty for the terminal
   */
  public static OutputStreamer begin(Optional<Path> target, PrintWriter terminal) {
    return new OutputStreamer(terminal, target.map(OutputStreamer::unfinished));
  }

  private static Unfinished unfinished(Path target) {
    try {
      Path part = ScoreFile.temporarySibling(target.toAbsolutePath());
      Writer writer =
          Files.newBufferedWriter(part, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
      TextFiles.deleteStale(part);
      return new Unfinished(target, part, writer);
    } catch (IOException e) {
      throw OutputPaths.unwritable(target, e);
    }
  }

  /**
   * Prints a piece of text.
   *
   * @throws PrintingStoppedException if the terminal takes no more
   * @throws UnwritableScoreException if the file cannot be written
   */
  public void print(String text) {
    if (file.isEmpty()) {
      terminal.print(text);
      if (terminal.checkError()) {
        throw new PrintingStoppedException();
      }
      return;
    }
    try {
      file.get().writer().write(text);
    } catch (IOException e) {
      throw OutputPaths.unwritable(file.get().target(), e);
    }
  }

  /** Completes the output; the file appears. */
  public void finish() {
    if (file.isEmpty()) {
      return;
    }
    Path target = file.get().target();
    try {
      file.get().writer().close();
      Files.move(file.get().part(), target.toAbsolutePath());
    } catch (FileAlreadyExistsException e) {
      throw OutputPaths.existing(target, "--output");
    } catch (IOException e) {
      throw OutputPaths.unwritable(target, e);
    }
  }

  /** Deletes an unfinished file. */
  @Override
  public void close() {
    if (file.isEmpty()) {
      return;
    }
    try {
      file.get().writer().close();
      Files.deleteIfExists(file.get().part());
    } catch (IOException e) {
      throw OutputPaths.unwritable(file.get().target(), e);
    }
  }
}
