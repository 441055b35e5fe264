package fingering.cli.terminal;

import fingering.musicxml.SelectionException;
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

/**
 * What is printed where somebody reads it, in the characters that can be shown there; signs that
 * cannot are replaced by {@link AsciiFallback}. Files are written elsewhere, always in UTF-8.
 */
public final class Screen extends PrintWriter {
  /** The variable of the environment that names the character set to print in. */
  public static final String VARIABLE = "FINGERING_CHARSET";

  private final PrintWriter exact;

  private Screen(Writer words, PrintWriter exact) {
    super(words);
    this.exact = exact;
  }

  /** A screen that shows the characters of a set. */
  public static Screen of(OutputStream stream, Charset charset) {
    return new Screen(
        new Fitting(new OutputStreamWriter(stream, charset), charset.newEncoder()),
        new PrintWriter(stream, false, StandardCharsets.UTF_8));
  }

  /**
   * The character set in which text is printed: as the environment asks, or else as the terminal,
   * or the system, has it.
   *
   * @param properties the properties of Java by name; an unknown one is empty
   * @param stream {@code stdout} or {@code stderr}
   * @throws SelectionException if the environment asks for none that is known
   */
  public static Charset charset(
      Map<String, String> environment, UnaryOperator<String> properties, String stream) {
    String asked = environment.getOrDefault(VARIABLE, "");
    if (!asked.isBlank()) {
      return named(asked)
          .orElseThrow(
              () ->
                  new SelectionException(
                      "%s is '%s', which is no character set: set it to UTF-8 or ASCII, or leave it out."
                          .formatted(VARIABLE, asked)));
    }
    // Java 19 knows the first; Java 17 the second where it prints on a terminal, and the last.
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

  /** The same place for forms that other programs read, and that are always in UTF-8. */
  public static PrintWriter exact(PrintWriter printer) {
    return printer instanceof Screen screen ? screen.exact : printer;
  }

  @Override
  public void flush() {
    super.flush();
    exact.flush();
  }

  /** Passes on what can be encoded, and stand-ins for the rest. */
  private static final class Fitting extends FilterWriter {
    private final CharsetEncoder encoder;

    Fitting(Writer out, CharsetEncoder encoder) {
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
