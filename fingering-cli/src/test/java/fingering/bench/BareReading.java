package fingering.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.audiveris.proxymusic.util.Marshalling;

/** A program that reads a file by the XML binding and does nothing else. */
public final class BareReading {
  private BareReading() {}

  /**
   * Reads.
   *
   * @param arguments the score
   */
  public static void main(String[] arguments)
      throws IOException, Marshalling.UnmarshallingException {
    try (InputStream in = Files.newInputStream(Path.of(arguments[0]))) {
      System.out.println(Marshalling.unmarshal(in).getClass());
    }
  }
}
