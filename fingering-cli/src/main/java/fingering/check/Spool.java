package fingering.check;

import fingering.musicxml.UnwritableScoreException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;

/** Text that waits in a temporary file until the text before it is complete. */
public final class Spool {
  private static final int CHARACTERS = 1 << 16;

  private final Path file;
  private final Writer writer;

  /** Creates an empty spool. */
  public Spool() {
    try {
      file = Files.createTempFile("fingering", ".part");
      file.toFile().deleteOnExit();
      writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  /** Appends text. */
  public void add(String text) {
    try {
      writer.write(text);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  /** Passes all text to a consumer, and deletes the file. */
  public void drainTo(Consumer<String> output) {
    try {
      writer.close();
      char[] read = new char[CHARACTERS];
      try (Reader reader = new BufferedReader(Files.newBufferedReader(file))) {
        for (int n = reader.read(read); n >= 0; n = reader.read(read)) {
          output.accept(new String(read, 0, n));
        }
      }
      Files.delete(file);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  private static UnwritableScoreException unwritable(IOException e) {
    return new UnwritableScoreException(
        "The page cannot be assembled in "
            + System.getProperty("java.io.tmpdir")
            + ": check that the disk is not full and that you may write there.",
        e);
  }
}
