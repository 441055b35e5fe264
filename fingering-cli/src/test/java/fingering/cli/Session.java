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

/** What one call of the command printed, and its exit code. */
public record Session(int code, String out, String err) {
  private static final String WRITTEN = "Written: ";

  public static final Path DEMO = Path.of("..", "docs", "demo", "demo.musicxml");

  /** Runs the command; paths may stand among the arguments. */
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

  /** The call went well and had nothing to complain of; it may have told of files. */
  public Session succeeded() {
    assertThat(complaints()).isEmpty();
    assertThat(code).isZero();
    return this;
  }

  /** The call was refused: one line for the player, no trace of the program, nothing printed. */
  public Session refused(int expected) {
    assertThat(err).startsWith("fingering: ").endsWith(System.lineSeparator());
    assertThat(err.lines()).hasSize(1);
    assertThat(err).doesNotContain("Exception", "\tat ", "not foreseen", "null");
    assertThat(out).isEmpty();
    assertThat(code).isEqualTo(expected);
    return this;
  }

  /** What was told among the messages, but for the files that were written. */
  public List<String> complaints() {
    return err.lines().filter(line -> !line.startsWith(WRITTEN)).toList();
  }

  /** The files that were told to be written. */
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
