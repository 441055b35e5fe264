package fingering.check;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.base.Joiner;
import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.hash.Hashing;
import com.google.common.net.UrlEscapers;
import fingering.music.Note;
import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.PartCheck;
import fingering.playability.Severity;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * The findings in the Static Analysis Results Interchange Format, version 2.1.0 (OASIS Standard),
 * which editors and build servers read.
 */
public final class CheckSarif extends JsonReport {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json";
  private static final ImmutableList<FindingKind> RULES =
      ImmutableList.copyOf(FindingKind.values());
  private static final Splitter FOLDERS = Splitter.on('/');

  private final String version;
  private final ReportOptions options;
  private final Map<String, CheckedFile> refused = new HashMap<>();

  /**
   * Creates a report.
   *
   * @param version the version of the program
   */
  public CheckSarif(ReportOptions options, String version, Consumer<String> output) {
    super(output);
    this.version = version;
    this.options = options;
  }

  @Override
  public void begin() {
    write(
        json -> {
          json.writeStartObject();
          json.writeStringField("$schema", SCHEMA);
          json.writeStringField("version", "2.1.0");
          json.writeArrayFieldStart("runs");
          json.writeStartObject();
          json.writeObjectFieldStart("tool");
          json.writeFieldName("driver");
          json.writeTree(driver());
          json.writeEndObject();
          json.writeStringField("columnKind", "utf16CodeUnits");
          json.writeArrayFieldStart("results");
        });
  }

  private ObjectNode driver() {
    ObjectNode driver = NODES.objectNode().put("name", "fingering check").put("version", version);
    ArrayNode rules = driver.putArray("rules");
    for (FindingKind kind : RULES) {
      ObjectNode rule = rules.addObject().put("id", kind.id()).put("name", name(kind));
      rule.putObject("shortDescription").put("text", kind.title());
      rule.putObject("fullDescription").put("text", kind.explanation());
    }
    return driver;
  }

  /** The id in the form that the format recommends for names: {@code OutOfRange}. */
  private static String name(FindingKind kind) {
    return Splitter.on('-')
        .splitToStream(kind.id())
        .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
        .collect(Collectors.joining());
  }

  @Override
  public void add(CheckedFile file) {
    if (file.check().isEmpty()) {
      refused.put(file.problem(), file);
      return;
    }
    for (PartCheck part : file.check().orElseThrow().parts()) {
      for (Finding finding : options.shown(part)) {
        write(json -> json.writeTree(result(file, part, finding)));
      }
    }
  }

  @Override
  public void end(CheckTally tally) {
    write(json -> json.writeEndArray());
    ObjectNode invocation =
        NODES
            .objectNode()
            .put("executionSuccessful", tally.refused().isEmpty())
            .put("exitCode", tally.exitCode(options.failOn()));
    ArrayNode notifications = invocation.putArray("toolExecutionNotifications");
    for (String sentence : tally.refused()) {
      ObjectNode notification = notifications.addObject().put("level", "error");
      notification.putObject("message").put("text", sentence);
      Optional.ofNullable(refused.get(sentence))
          .ifPresent(
              file ->
                  artifact(
                      notification.putArray("locations").addObject().putObject("physicalLocation"),
                      file));
    }
    ArrayNode invocations = NODES.arrayNode().add(invocation);
    field("invocations", invocations);
    write(
        json -> {
          json.writeEndObject();
          json.writeEndArray();
        });
    finish();
  }

  private static ObjectNode result(CheckedFile file, PartCheck part, Finding finding) {
    ObjectNode result =
        NODES
            .objectNode()
            .put("ruleId", finding.kind().id())
            .put("ruleIndex", RULES.indexOf(finding.kind()))
            .put("level", level(finding.severity()));
    String where = part.part().name() + ", " + finding.where();
    String text = where + ": " + finding.reason();
    result
        .putObject("message")
        .put("text", finding.suggestion().map(fix -> text + " " + fix).orElse(text));
    ObjectNode location = result.putArray("locations").addObject();
    ObjectNode physical = location.putObject("physicalLocation");
    artifact(physical, file);
    file.lines()
        .flatMap(lines -> lines.line(part.part().number(), finding.place().measureIndex()))
        .ifPresent(line -> physical.putObject("region").put("startLine", line));
    location
        .putArray("logicalLocations")
        .addObject()
        .put("name", finding.where())
        .put("fullyQualifiedName", part.part().name() + "/" + finding.where())
        .put("kind", "measure");
    result.putObject("partialFingerprints").put("finding/v1", fingerprint(file, part, finding));
    result
        .putObject("properties")
        .put("severity", finding.severity().id())
        .put("part", part.part().name())
        .put("measure", finding.place().measure())
        .put("beat", finding.place().beatText());
    return result;
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case UNPLAYABLE -> "error";
      case RISKY -> "warning";
      case WORTH_KNOWING -> "note";
    };
  }

  /** Identifies a finding from one check to the next; does not depend on line or tempo. */
  private static String fingerprint(CheckedFile file, PartCheck part, Finding finding) {
    String notes =
        finding.notes().stream()
            .map(Note::written)
            .map(Object::toString)
            .collect(Collectors.joining("+"));
    String spot =
        Joiner.on('|')
            .join(
                file.name(),
                part.part().number(),
                finding.kind().id(),
                finding.place().measureIndex(),
                finding.place().beatText(),
                notes);
    return Hashing.sha256().hashString(spot, StandardCharsets.UTF_8).toString().substring(0, 32);
  }

  /** Relative names stay relative, so readers can resolve them in their own folder. */
  private static void artifact(ObjectNode physical, CheckedFile file) {
    String uri =
        file.file().isAbsolute()
            ? file.file().toUri().toString()
            : FOLDERS
                .splitToStream(file.name())
                .map(UrlEscapers.urlPathSegmentEscaper()::escape)
                .collect(Collectors.joining("/"));
    physical.putObject("artifactLocation").put("uri", uri);
  }
}
