package fingering.cli.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.file.Path;

/** Reads files of keys and values that a user writes, in YAML, or in JSON, which is YAML too. */
public final class KeyedFile {
  private KeyedFile() {}

  /** Makes something of what a parser reads. */
  public interface Reading<T> {
    T of(JsonParser parser) throws IOException;
  }

  /**
   * What a file holds.
   *
   * @param what what it should hold: briefs
   * @throws FingeringException if it holds something else; the message is one sentence and names
   *     file and line
   */
  public static <T> T read(Path file, String what, Reading<T> reading) {
    String text = SmallFile.text(file, what);
    try (JsonParser parser = new YAMLFactory().createParser(text)) {
      return reading.of(parser);
    } catch (WrongLineException e) {
      throw new FingeringException("%s, line %d: %s".formatted(file, e.line(), e.getMessage()), e);
    } catch (JsonProcessingException e) {
      throw new FingeringException(
          "%s, line %d: this is no YAML: %s"
              .formatted(
                  file,
                  e.getLocation() == null ? 1 : e.getLocation().getLineNr(),
                  e.getOriginalMessage().lines().findFirst().orElse("")),
          e);
    } catch (IOException e) {
      throw new FingeringException(file + " cannot be read: " + e.getMessage(), e);
    }
  }

  /** Takes one value of a key. */
  public interface Value {
    void take(String value) throws IOException;
  }

  /** Hands on the value of a key, or each of the list that it has. */
  public static void values(JsonParser parser, String key, Value each) throws IOException {
    if (parser.nextToken() == JsonToken.START_ARRAY) {
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        each.take(scalar(parser, key));
      }
    } else {
      each.take(scalar(parser, key));
    }
  }

  private static String scalar(JsonParser parser, String key) throws IOException {
    if (!parser.currentToken().isScalarValue()) {
      throw oneOrMore(parser, key);
    }
    return parser.getText();
  }

  /** A key that has neither a value nor a list of them. */
  public static WrongLineException oneOrMore(JsonParser parser, String key) {
    return wrong(parser, "'" + key + "' has one value, or a list of values");
  }

  /** What stands where the parser is cannot be read. */
  public static WrongLineException wrong(JsonParser parser, String what) {
    return new WrongLineException(line(parser), what);
  }

  /** The line where the parser is, from 1. */
  public static int line(JsonParser parser) {
    return parser.currentTokenLocation().getLineNr();
  }
}
