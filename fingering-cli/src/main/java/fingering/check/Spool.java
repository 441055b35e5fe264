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

/** Text that is put by until what comes before it is known; it lies on the disk. */
public final class Spool {
  private static final int CHARACTERS = 1 << 16;

  private final Path file;
  private final Writer writer;

  /** An empty one. */
  public Spool() {
    try {
      file = Files.createTempFile("fingering", ".part");
      file.toFile().deleteOnExit();
      writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw full(e);
    }
  }

  /** Puts text by. */
  public void add(String text) {
    try {
      writer.write(text);
    } catch (IOException e) {
      throw full(e);
    }
  }

  /** Hands on all that was put by, and forgets it. */
  public void pour(Consumer<String> printing) {
    try {
      writer.close();
      char[] read = new char[CHARACTERS];
      try (Reader reader = new BufferedReader(Files.newBufferedReader(file))) {
        for (int n = reader.read(read); n >= 0; n = reader.read(read)) {
          printing.accept(new String(read, 0, n));
        }
      }
      Files.delete(file);
    } catch (IOException e) {
      throw full(e);
    }
  }

  private static UnwritableScoreException full(IOException e) {
    return new UnwritableScoreException(
        "The page cannot be put together in "
            + System.getProperty("java.io.tmpdir")
            + ": see that its disk is not full, and that you may write there.",
        e);
  }
}
