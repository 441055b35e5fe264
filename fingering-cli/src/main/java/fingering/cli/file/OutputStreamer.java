package fingering.cli.file;

import fingering.musicxml.UnwritableScoreException;
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

/** Text that is printed bit by bit, on the terminal or into a new file. */
public final class OutputStreamer implements Closeable {
  private record Unfinished(Path target, Path beside, Writer writer) {}

  private final PrintWriter terminal;
  private final Optional<Unfinished> file;

  private OutputStreamer(PrintWriter terminal, Optional<Unfinished> file) {
    this.terminal = terminal;
    this.file = file;
  }

  /** Begins where the options say; a file appears when all of it is {@link #finish finished}. */
  public static OutputStreamer begin(OutputFile options, PrintWriter terminal) {
    return new OutputStreamer(terminal, options.output.map(OutputStreamer::unfinished));
  }

  private static Unfinished unfinished(Path target) {
    try {
      Path beside = OutputFile.beside(target.toAbsolutePath());
      // Should the player break off.
      beside.toFile().deleteOnExit();
      return new Unfinished(
          target,
          beside,
          Files.newBufferedWriter(beside, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW));
    } catch (IOException e) {
      throw OutputFile.unwritable(target, e);
    }
  }

  /**
   * Prints a bit.
   *
   * @throws UnwritableScoreException if it cannot be written, or nobody reads it any more
   */
  public void print(String text) {
    if (file.isEmpty()) {
      terminal.print(text);
      if (terminal.checkError()) {
        throw new UnwritableScoreException(
            "Nothing more can be printed: what reads it has ended, or its disk is full.");
      }
      return;
    }
    try {
      file.get().writer().write(text);
    } catch (IOException e) {
      throw OutputFile.unwritable(file.get().target(), e);
    }
  }

  /** Makes the file appear. */
  public void finish() {
    if (file.isEmpty()) {
      return;
    }
    Path target = file.get().target();
    try {
      file.get().writer().close();
      Files.move(file.get().beside(), target.toAbsolutePath());
    } catch (FileAlreadyExistsException e) {
      throw OutputFile.existing(target, "--output");
    } catch (IOException e) {
      throw OutputFile.unwritable(target, e);
    }
  }

  /** Takes away what was not finished. */
  @Override
  public void close() {
    if (file.isEmpty()) {
      return;
    }
    try {
      file.get().writer().close();
      Files.deleteIfExists(file.get().beside());
    } catch (IOException e) {
      throw OutputFile.unwritable(file.get().target(), e);
    }
  }
}
