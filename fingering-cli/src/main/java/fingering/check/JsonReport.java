package fingering.check;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.function.Consumer;

/** A report in JSON, of which each piece is printed as soon as it is known. */
abstract class JsonReport implements CheckReport {
  static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final StringWriter written = new StringWriter();
  private final Consumer<String> printing;
  private final JsonGenerator generator;

  JsonReport(Consumer<String> printing) {
    this.printing = printing;
    try {
      ObjectMapper mapper = new ObjectMapper();
      generator = mapper.createGenerator(written).useDefaultPrettyPrinter();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Something that is written by the generator. */
  @FunctionalInterface
  interface Piece {
    void write(JsonGenerator generator) throws IOException;
  }

  /** Writes a piece, and prints what is complete. */
  final void write(Piece piece) {
    try {
      piece.write(generator);
      generator.flush();
    } catch (IOException e) {
      // Nothing is written but into memory.
      throw new UncheckedIOException(e);
    }
    printing.accept(written.toString());
    written.getBuffer().setLength(0);
  }

  /** Writes a field of the object that is open. */
  final void field(String name, JsonNode value) {
    write(
        json -> {
          json.writeFieldName(name);
          json.writeTree(value);
        });
  }

  /** Ends the text. */
  final void finish() {
    write(JsonGenerator::writeEndObject);
    printing.accept("\n");
  }
}
