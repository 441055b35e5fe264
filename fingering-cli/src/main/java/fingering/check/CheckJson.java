package fingering.check;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.music.Note;
import fingering.music.Place;
import fingering.playability.Difficulty;
import fingering.playability.Finding;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.function.Consumer;

/** The findings as JSON; see docs/json.md. */
public final class CheckJson extends JsonReport {
  private static final String FORMAT = "fingering-check";
  private static final int VERSION = 1;

  private final ReportOptions options;

  /** Creates a report that is printed in parts. */
  public CheckJson(ReportOptions options, Consumer<String> output) {
    super(output);
    this.options = options;
  }

  @Override
  public void begin() {
    write(
        json -> {
          json.writeStartObject();
          json.writeStringField("format", FORMAT);
          json.writeNumberField("version", VERSION);
          json.writeStringField("level", options.level().name());
          json.writeStringField("failOn", options.failOn().id());
          json.writeFieldName("scores");
          json.writeStartArray();
        });
  }

  @Override
  public void add(CheckedFile file) {
    ObjectNode node = NODES.objectNode().put("file", file.name());
    file.check()
        .ifPresentOrElse(check -> fill(node, check), () -> node.put("problem", file.problem()));
    write(json -> json.writeTree(node));
  }

  @Override
  public void end(CheckTally tally) {
    write(json -> json.writeEndArray());
    ObjectNode summary = NODES.objectNode().put("scores", tally.lines().size());
    ArrayNode problems = summary.putArray("problems");
    tally.refused().forEach(problems::add);
    counts(summary, tally.total());
    summary.put("exitCode", tally.exitCode(options.failOn()));
    field("summary", summary);
    finish();
  }

  private static void counts(ObjectNode node, Map<Severity, Integer> counts) {
    ObjectNode counted = node.putObject("counts");
    counts.forEach((severity, count) -> counted.put(severity.id(), count));
  }

  private void fill(ObjectNode node, ScoreCheck check) {
    node.put("title", check.title());
    counts(node, CheckTally.counts(check.findings()));
    ArrayNode parts = node.putArray("parts");
    check.parts().forEach(part -> fill(parts.addObject(), part));
    ArrayNode leftOut = node.putArray("leftOut");
    check.leftOut().forEach(part -> leftOut.add(part.name()));
    ArrayNode remarks = node.putArray("remarks");
    check.remarks().forEach(remarks::add);
  }

  private void fill(ObjectNode node, PartCheck part) {
    node.put("number", part.part().number())
        .put("part", part.part().id())
        .put("name", part.part().name())
        .put("instrument", part.instrument().id())
        .put("playedBy", part.forces().id())
        .put("measures", part.measures())
        .put("notes", part.notes());
    counts(node, CheckTally.counts(part));
    ObjectNode difficulty =
        node.putObject("difficulty")
            .put("grade", part.difficulty().grade())
            .put("exact", decimals(part.difficulty().exact()));
    ArrayNode components = difficulty.putArray("components");
    for (Difficulty.Component component : part.difficulty().components()) {
      components
          .addObject()
          .put("component", component.id())
          .put("name", component.name())
          .put("explanation", component.explanation())
          .put("amount", component.amount())
          .put("grade", decimals(component.grade()));
    }
    ArrayNode findings = node.putArray("findings");
    options.shown(part).forEach(finding -> fill(findings.addObject(), finding));
    ArrayNode remarks = node.putArray("remarks");
    part.remarks().forEach(remarks::add);
  }

  private static void fill(ObjectNode node, Finding finding) {
    fill(
        node.put("kind", finding.kind().id()).put("severity", finding.severity().id()),
        finding.place());
    if (finding.passage()) {
      node.put("toMeasure", finding.to().measure())
          .put("toMeasureIndex", finding.to().measureIndex())
          .put("toBeat", new BigDecimal(finding.to().beatText()));
      ArrayNode places = node.putArray("places");
      finding.places().forEach(place -> fill(places.addObject(), place));
    }
    ArrayNode notes = node.putArray("notes");
    for (Note note : finding.notes()) {
      notes.addObject().put("written", note.written().toString()).put("midi", note.midi());
    }
    node.put("reason", finding.reason());
    finding.suggestion().ifPresent(fix -> node.put("wayOut", fix));
  }

  private static void fill(ObjectNode node, Place place) {
    node.put("measure", place.measure())
        .put("measureIndex", place.measureIndex())
        .put("beat", new BigDecimal(place.beatText()));
  }

  private static BigDecimal decimals(double grade) {
    return BigDecimal.valueOf(grade).setScale(1, RoundingMode.HALF_UP);
  }
}
