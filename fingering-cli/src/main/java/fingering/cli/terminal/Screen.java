package fingering.cli.terminal;

import fingering.musicxml.SelectionException;
import java.io.FilterOutputStream;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A terminal, or the file or program that standard output is redirected to. {@link AsciiFallback}
 * replaces the characters that its character set lacks. Files of options such as {@code --output}
 * do not go through here; they are always UTF-8.
 */
public final class Screen extends PrintWriter {
  /** The environment variable that names the character set of the output. */
  public static final String VARIABLE = "FINGERING_CHARSET";

  private static final String COLUMNS = "COLUMNS";
  private static final int DEFAULT_COLUMNS = 80;
  private static final int CONTINUED = 2;
  private static final int MIN_COLUMNS = 60;
  private static final int MAX_COLUMNS = 200;

  private final WatchedStream stream;
  private final PrintWriter exact;

  private Screen(WatchedStream stream, Writer text, PrintWriter exact) {
    super(text);
    this.stream = stream;
    this.exact = exact;
  }

  /** A screen with a character set. */
  public static Screen of(OutputStream stream, Charset charset) {
    WatchedStream watched = new WatchedStream(stream);
    return new Screen(
        watched,
        new FallbackWriter(new OutputStreamWriter(watched, charset), charset.newEncoder()),
        new PrintWriter(watched, false, StandardCharsets.UTF_8));
  }

  /** Why the output of a printer is incomplete; empty if all of it was printed. */
  public static Optional<IOException> failure(PrintWriter printer) {
    printer.flush();
    return printer instanceof Screen screen ? screen.stream.failure() : Optional.empty();
  }

  /**
   * The character set of the output: from the environment, else from the terminal, else from the
   * system.
   *
   * @param properties returns the value of a Java system property; empty if it is not set
   * @param stream {@code stdout} or {@code stderr}
   * @throws SelectionException if the environment names an unknown one
   */
  public static Charset charset(
      Map<String, String> environment, UnaryOperator<String> properties, String stream) {
    String wanted = environment.getOrDefault(VARIABLE, "");
    if (!wanted.isBlank()) {
      return named(wanted)
          .orElseThrow(
              () ->
                  new SelectionException(
                      "%s is '%s', which is not a character set: set it to UTF-8 or ASCII, or remove it."
                          .formatted(VARIABLE, wanted)));
    }
    // Java 19 sets the first. Java 17 sets the second on a terminal, and always the last.
    return Stream.of(stream + ".encoding", "sun." + stream + ".encoding", "native.encoding")
        .map(properties)
        .flatMap(name -> named(name).stream())
        .findFirst()
        .orElse(StandardCharsets.UTF_8);
  }

  private static Optional<Charset> named(String name) {
    try {
      return name.isBlank()
          ? Optional.empty()
          : Optional.of(Charset.forName(name.strip())).filter(Charset::canEncode);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
      return Optional.empty();
    }
  }

  /** A printer to the same place for formats that are always UTF-8. */
  public static PrintWriter exact(PrintWriter printer) {
    return printer instanceof Screen screen ? screen.exact : printer;
  }

  /**
   * An error as it is printed. In a terminal, whose width is in the environment, it is wrapped; for
   * other programs it is one line.
   */
  public static String complaint(String sentence) {
    return complaint(sentence, System.getenv());
  }

  static String complaint(String sentence, Map<String, String> environment) {
    String line = "fingering: " + sentence;
    return environment.containsKey(COLUMNS)
        ? String.join(
            System.lineSeparator(), TextLayout.wrap(line, columns(environment), CONTINUED))
        : line;
  }

  /** Width of text in columns: COLUMNS between 60 and 200, or 80. */
  public static int columns() {
    return columns(System.getenv());
  }

  private static int columns(Map<String, String> environment) {
    String columns = environment.get(COLUMNS);
    try {
      return columns == null
          ? DEFAULT_COLUMNS
          : Math.max(MIN_COLUMNS, Math.min(MAX_COLUMNS, Integer.parseInt(columns.strip())));
    } catch (NumberFormatException e) {
      return DEFAULT_COLUMNS;
    }
  }

  @Override
  public void flush() {
    super.flush();
    exact.flush();
  }

  /** Keeps the first failure, of which printers only say that there was one. */
  private static final class WatchedStream extends FilterOutputStream {
    private @Nullable IOException failure;

    WatchedStream(OutputStream out) {
      super(out);
    }

    Optional<IOException> failure() {
      return Optional.ofNullable(failure);
    }

    @Override
    public void write(int one) throws IOException {
      write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      attempt(() -> out.write(bytes, from, length));
    }

    @Override
    public void flush() throws IOException {
      attempt(out::flush);
    }

    /** After a failure nothing more is printed: a text with a gap would look complete. */
    private void attempt(Attempt attempt) throws IOException {
      if (failure != null) {
        throw failure;
      }
      try {
        attempt.make();
      } catch (IOException e) {
        failure = e;
        throw e;
      }
    }

    private interface Attempt {
      void make() throws IOException;
    }
  }

  /** Replaces the characters that cannot be encoded. */
  private static final class FallbackWriter extends FilterWriter {
    private final CharsetEncoder encoder;

    FallbackWriter(Writer out, CharsetEncoder encoder) {
      super(out);
      this.encoder = encoder;
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
      out.write(AsciiFallback.fit(text.substring(from, from + length), encoder::canEncode));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
      write(new String(text, from, length), 0, length);
    }

    @Override
    public void write(int character) throws IOException {
      write(String.valueOf((char) character), 0, 1);
    }
  }
}
