package fingering.cli.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.collect.ImmutableList;
import fingering.cli.file.PlanFile;
import fingering.cli.student.ScoringContext;
import fingering.fingerboard.HarmonicTouch;
import fingering.fingerboard.Placement;
import fingering.music.Passage;
import fingering.plan.Alternative;
import fingering.plan.Brief;
import fingering.plan.Choice;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanRemarks;
import fingering.plan.PlannedNote;
import fingering.plan.RuleCost;
import fingering.scoring.Charge;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** Plans as JSON for other programs; the format and its version come first. */
public final class PlanJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private PlanJson() {}

  /**
   * One plan.
   *
   * @param search the best plan of a brief without further demands, for the prices of demands
   */
  public static String of(Plan plan, Function<Brief, Plan> search, ScoringContext context) {
    return text(document(plan, search, context));
  }

  /** A plan with the fingerings of the notes of one moment, its own first. */
  public static String of(
      Plan plan,
      ImmutableList<Alternative> alternatives,
      Function<Brief, Plan> search,
      ScoringContext context) {
    ObjectNode root = document(plan, search, context);
    WhyJson.fill(root, alternatives);
    return text(root);
  }

  /** A plan with the fingerings of some measures, its own first. */
  public static String ofChoices(
      Plan plan,
      ImmutableList<Choice> choices,
      Function<Brief, Plan> search,
      ScoringContext context) {
    ObjectNode root = document(plan, search, context);
    ChoicesJson.fill(root, choices);
    return text(root);
  }

  /** Plans side by side. */
  public static String of(
      Comparison comparison, Function<Brief, Plan> search, ScoringContext context) {
    ObjectNode root = header(comparison.passage(), context);
    VerdictJson.fill(root, comparison, context.level());
    ArrayNode plans = root.putArray("plans");
    comparison.plans().forEach(plan -> fill(plans.addObject(), plan, search, context));
    ArrayNode remarks = root.putArray("remarks");
    comparison.passage().remarks().forEach(remarks::add);
    comparison.allRemarks().forEach(remarks::add);
    comparison.plans().stream()
        .flatMap(plan -> PlanRemarks.of(plan).stream())
        .forEach(remarks::add);
    return text(root);
  }

  /** One plan as a JSON document. */
  public static ObjectNode document(
      Plan plan, Function<Brief, Plan> search, ScoringContext context) {
    ObjectNode root = header(plan.passage(), context);
    VerdictJson.fill(
        root,
        new Comparison(plan.passage(), ImmutableList.of(plan), ImmutableList.of()),
        context.level());
    fill(root, plan, search, context);
    ArrayNode remarks = root.putArray("remarks");
    plan.passage().remarks().forEach(remarks::add);
    PlanRemarks.of(plan).forEach(remarks::add);
    return root;
  }

  private static ObjectNode header(Passage passage, ScoringContext context) {
    ObjectNode root = NODES.objectNode();
    root.put("format", PlanFile.FORMAT)
        .put("version", PlanFile.VERSION)
        .put("title", passage.title())
        .put("part", passage.partName())
        .put("instrument", passage.instrument().id())
        .put("tuning", passage.instrument().tuning())
        .put("size", passage.instrument().size())
        .put("tempo", passage.tempo().toString());
    ScoringJson.fill(root, context);
    return root;
  }

  private static void fill(
      ObjectNode node, Plan plan, Function<Brief, Plan> search, ScoringContext context) {
    node.put("name", plan.name());
    ArrayNode notes = node.putArray("notes");
    Map<Integer, Integer> firstNotes = new HashMap<>();
    for (int i = 0; i < plan.notes().size(); i++) {
      PlannedNote note = plan.notes().get(i);
      notes.add(note(plan.passage(), note));
      firstNotes.putIfAbsent(note.moment(), i);
    }
    ObjectNode cost = node.putObject("cost");
    cost.put("total", plan.total());
    ArrayNode rules = cost.putArray("rules");
    for (RuleCost rule : plan.rules()) {
      ObjectNode entry =
          rules
              .addObject()
              .put("rule", rule.rule())
              .put("name", rule.name())
              .put("explanation", rule.explanation())
              .put("unit", rule.unit())
              .put("weight", rule.weight())
              .put("amount", rule.amount())
              .put("cost", rule.cost());
      ArrayNode charged = entry.putArray("notes");
      for (Charge charge : plan.charges()) {
        if (charge.rule().equals(rule.rule())) {
          charged
              .addObject()
              .put("note", firstNotes.get(charge.moment()))
              .put("amount", charge.amount())
              .put("cost", charge.cost());
        }
      }
    }
    ObjectNode counts = node.putObject("counts");
    counts
        .put("shifts", plan.shifts())
        .put("crossings", plan.crossings())
        .put("fourthFingers", plan.fourthFingers())
        .put("openStrings", plan.openStrings())
        .put("notesOutside", plan.notesOutside());
    plan.highestPosition().ifPresent(p -> counts.put("highestPosition", p.toString()));
    ObjectNode positions = counts.putObject("notesByPosition");
    plan.notesByPosition().forEach((position, n) -> positions.put(position.toString(), n));
    DemandsJson.fill(node, plan, search);
    TempoJson.fill(node, plan, context.level());
    ScoringJson.newSkills(node, plan, context.students());
  }

  private static ObjectNode note(Passage passage, PlannedNote note) {
    Placement placement = note.placement();
    ObjectNode node =
        NODES
            .objectNode()
            .put("part", passage.partId())
            .put("measure", note.note().place().measure())
            .put("measureIndex", note.note().place().measureIndex())
            .put("onset", onset(note))
            .put("written", note.note().written().toString())
            .put("midi", note.note().midi())
            .put("string", placement.string())
            .put("finger", note.finger())
            .put("position", note.position().toString());
    note.thumb(passage.instrument()).ifPresent(pitch -> node.put("thumb", pitch.toString()));
    placement.touch().ifPresent(touch -> node.set("harmonic", harmonic(touch)));
    placement.trill().ifPresent(finger -> node.put("trill", finger.symbol()));
    return node.put("shift", note.shift())
        .put("crossing", note.crossing())
        .put("outside", note.outside());
  }

  private static ObjectNode harmonic(HarmonicTouch touch) {
    return NODES
        .objectNode()
        .put("finger", touch.finger().symbol())
        .put("node", BigDecimal.valueOf(touch.millimetres()).setScale(1, RoundingMode.HALF_UP))
        .put("partial", touch.partial());
  }

  /** The onset in quarter notes from the start of the measure, to six decimals. */
  private static BigDecimal onset(PlannedNote note) {
    BigDecimal exact =
        note.note().place().onset().bigDecimalValue(6, RoundingMode.HALF_UP).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0) : exact;
  }

  /** A JSON document as text. */
  public static String text(ObjectNode root) {
    try {
      return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
