package fingering.check;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.function.Consumer;

/** A report in JSON that prints each piece as soon as it is complete. */
abstract class JsonReport implements CheckReport {
  static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final StringWriter written = new StringWriter();
  private final Consumer<String> output;
  private final JsonGenerator generator;

  JsonReport(Consumer<String> output) {
    this.output = output;
    try {
      ObjectMapper mapper = new ObjectMapper();
      generator = mapper.createGenerator(written).useDefaultPrettyPrinter();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes a piece of JSON. */
  @FunctionalInterface
  interface Piece {
    void write(JsonGenerator generator) throws IOException;
  }

  /** Writes a piece, and prints the text so far. */
  final void write(Piece piece) {
    try {
      piece.write(generator);
      generator.flush();
    } catch (IOException e) {
      // Cannot happen: the generator writes to memory.
      throw new UncheckedIOException(e);
    }
    output.accept(written.toString());
    written.getBuffer().setLength(0);
  }

  /** Writes a field of the current object. */
  final void field(String name, JsonNode value) {
    write(
        json -> {
          json.writeFieldName(name);
          json.writeTree(value);
        });
  }

  /** Ends the document. */
  final void finish() {
    write(JsonGenerator::writeEndObject);
    output.accept("\n");
  }
}
