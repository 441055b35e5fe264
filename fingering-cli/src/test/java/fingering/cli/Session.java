package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;

/** The output and the exit code of one run of the command. */
public record Session(int code, String out, String err) {
  private static final String WRITTEN = "Written: ";

  public static final Path DEMO = Path.of("..", "docs", "demo", "demo.musicxml");

  /** Runs the command; arguments may be paths. */
  public static Session of(Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    PrintWriter outPrinter = new PrintWriter(out);
    PrintWriter errPrinter = new PrintWriter(err);
    String[] words = new String[arguments.length];
    for (int i = 0; i < words.length; i++) {
      words[i] = arguments[i].toString();
    }
    int code = Main.run(outPrinter, errPrinter, words);
    outPrinter.flush();
    errPrinter.flush();
    return new Session(code, out.toString(), err.toString());
  }

  /** The output without the command to type next, which repeats what was typed. */
  public String answer() {
    return out.replaceFirst("(?s)\\nNext\\n.*?\\n\\n", "\n");
  }

  /** Asserts that the run succeeded without messages, except names of written files. */
  public Session succeeded() {
    assertThat(complaints()).isEmpty();
    assertThat(code).isZero();
    return this;
  }

  /** Asserts that the run was refused: one line for the user, no stack trace, no output. */
  public Session refused(int expected) {
    assertThat(err).startsWith("fingering: ").endsWith(System.lineSeparator());
    assertThat(err.lines()).hasSize(1);
    assertThat(err).doesNotContain("Exception", "\tat ", "unexpectedly", "null");
    assertThat(out).isEmpty();
    assertThat(code).isEqualTo(expected);
    return this;
  }

  /** The messages, except the names of written files. */
  public List<String> complaints() {
    return err.lines().filter(line -> !line.startsWith(WRITTEN)).toList();
  }

  /** The files that the messages name as written. */
  public List<Path> written() {
    return err.lines()
        .filter(line -> line.startsWith(WRITTEN))
        .map(line -> Path.of(line.substring(WRITTEN.length())))
        .toList();
  }

  public List<String> lines() {
    return out.lines().toList();
  }

  public JsonNode json() {
    return json(succeeded().out);
  }

  public static JsonNode json(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (JsonProcessingException e) {
      throw new AssertionError(e);
    }
  }

  /** The entries of an array. */
  public static List<JsonNode> entries(JsonNode array) {
    assertThat(array.isArray()).isTrue();
    return StreamSupport.stream(array.spliterator(), false).toList();
  }

  /** One text field of every entry. */
  public static List<String> texts(JsonNode array, String field) {
    return entries(array).stream().map(entry -> entry.path(field).asText()).toList();
  }
}
