package fingering.web.running;

import com.google.common.io.ByteStreams;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.Proxy;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A server that may be running, as a second start of the program knows it.
 *
 * @param host its address and port
 * @param secret what a start must say to be answered
 * @param proof what the server says in its answer, so that no other program is taken for it
 */
public record RunningServer(String host, String secret, String proof) {
  /** Where a second start asks. */
  public static final String PATH = "/hand-over";

  /** The header with the secret. */
  public static final String SECRET = "X-Secret";

  /** The header with the proof. */
  public static final String PROOF = "X-Proof";

  /** The field that names a file. */
  public static final String FILE = "file";

  /** The field that asks for the demo; any value will do. */
  public static final String DEMO = "demo";

  private static final Pattern ADDRESS = Pattern.compile("/enter\\?token=[\\w-]+(&score=[\\w-]+)?");
  private static final int CONNECT_MILLIS = 2_000;

  /** As long as the server gives itself to read a score. */
  private static final int ANSWER_MILLIS = 10_000;

  private static final int LONGEST_ANSWER = 16 << 10;

  /**
   * Asks the server to open something.
   *
   * @return an address that opens it once; empty if the server has ended
   * @throws FingeringException if the server cannot read the file; the message is one sentence
   */
  public Optional<String> open(Wanted wanted) {
    try {
      // No proxy of the user needs to know.
      HttpURLConnection connection =
          (HttpURLConnection)
              URI.create("http://" + host + PATH).toURL().openConnection(Proxy.NO_PROXY);
      connection.setConnectTimeout(CONNECT_MILLIS);
      connection.setReadTimeout(ANSWER_MILLIS);
      connection.setInstanceFollowRedirects(false);
      connection.setRequestProperty(SECRET, secret);
      connection.setDoOutput(true);
      connection.getOutputStream().write(form(wanted).getBytes(StandardCharsets.UTF_8));
      return answer(connection);
    } catch (IOException | ClassCastException e) {
      return Optional.empty();
    }
  }

  private Optional<String> answer(HttpURLConnection connection) throws IOException {
    int status = connection.getResponseCode();
    if (!proof.equals(connection.getHeaderField(PROOF))) {
      return Optional.empty();
    }
    boolean done = status == HttpURLConnection.HTTP_OK;
    try (InputStream in = done ? connection.getInputStream() : connection.getErrorStream()) {
      String text =
          new String(ByteStreams.limit(in, LONGEST_ANSWER).readAllBytes(), StandardCharsets.UTF_8)
              .strip();
      if (!done) {
        throw new FingeringException(text);
      }
      return Optional.of(text)
          .filter(address -> ADDRESS.matcher(address).matches())
          .map(address -> "http://" + host + address);
    }
  }

  private static String form(Wanted wanted) {
    return wanted
        .file()
        .map(
            file ->
                FILE
                    + "="
                    + URLEncoder.encode(
                        file.toAbsolutePath().normalize().toString(), StandardCharsets.UTF_8))
        .orElse(wanted.demo() ? DEMO + "=1" : "");
  }
}
