package fingering;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Alternative;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.PlannedNote;
import fingering.plan.Planner;
import fingering.plan.RuleCost;
import fingering.plan.marks.PlanMarks;
import fingering.scoring.Charge;
import fingering.scoring.rules.StandardRules;
import fingering.tables.RomanNumeral;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Checks the page {@code docs/contributing/architecture.md}, which follows one note through the
 * program.
 */
class ArchitecturePageTest {
  private static final Path DOCS = Path.of("..", "docs");

  /** The G4 with which measure 17 of the demo begins. */
  private static final String PLACE = "measure 17, beat 1";

  private final ScoreFile file = ScoreFile.read(DOCS.resolve("demo").resolve("demo.musicxml"));
  private final Passage passage = ScoreReader.read(file).passage(PassageRequest.WHOLE);
  private final PlanComparer comparer =
      PlanComparer.of(passage, StandardRules.commonPractice(), LeftHand.MEDIUM, ImmutableSet.of());
  private final Plan plan = comparer.partlyUpperPlan().orElseThrow();
  private final PlannedNote planned =
      plan.notes().stream()
          .filter(one -> one.note().place().toString().equals(PLACE))
          .findFirst()
          .orElseThrow();
  private final int index = plan.notes().indexOf(planned);

  @Test
  void theNoteIsReadAndWrittenAsShown() throws IOException {
    List<String> shown = blocks();
    String marked = ScoreMarker.mark(file.text(), PlanMarks.of(plan));
    assertThat(flush(file.text())).contains(shown.get(0)).doesNotContain(shown.get(5));
    assertThat(flush(marked)).contains(shown.get(5)).doesNotContain(shown.get(0));
  }

  @Test
  void theNoteIsPlannedAsShown() throws IOException {
    assertThat(blocks().subList(1, 5)).containsExactly(note(), placements(), charges(), search());
  }

  @Test
  void thePictureShowsEveryPackageInOrder() throws IOException {
    String picture = Files.readString(DOCS.resolve("pictures").resolve("architecture.svg"));
    assertThat(picture)
        .containsSubsequence(
            ArchitectureTest.packages().stream()
                .map(name -> ">" + name.substring("fingering.".length()) + "</text>")
                .toList());
  }

  private String note() {
    Note note = planned.note();
    Moment moment = passage.moments().get(planned.moment());
    return """
        place    %s
        written  %s; sounds %s, MIDI %d
        start    %s quarter notes after the start of the part
        length   %s quarter notes: at quarter = %s, %d microseconds
        before   a rest of %d microseconds
        address  part %d, measure %d, note %d of the file, from 0"""
        .formatted(
            note.place(),
            note.written().display(),
            note.sounding().display(),
            note.midi(),
            fraction(note.start()),
            fraction(note.length()),
            passage.tempo().perMinute().toPlainString(),
            moment.soundMicros(),
            moment.restMicros(),
            note.address().part(),
            note.address().measure(),
            note.address().note());
  }

  private static String fraction(Object number) {
    return number.toString().replace(" ", "");
  }

  private String placements() {
    Map<Integer, List<Placement>> strings = new TreeMap<>();
    Fingerboard.of(passage.instrument())
        .placements(planned.note().sounding())
        .forEach(one -> strings.computeIfAbsent(one.string(), s -> new ArrayList<>()).add(one));
    return strings.entrySet().stream()
        .map(
            entry ->
                String.format(
                    Locale.ROOT,
                    "%-3s  %5.1f mm  %s",
                    RomanNumeral.of(entry.getKey()),
                    entry.getValue().get(0).millimetres(),
                    entry.getValue().stream()
                        .map(ArchitecturePageTest::finger)
                        .collect(joining(", "))))
        .collect(joining("\n"));
  }

  private static String finger(Placement placement) {
    return placement.finger().symbol()
        + " "
        + placement.frame().position().display()
        + (placement.stretch() > 0 ? "*" : "");
  }

  private String charges() {
    List<Charge> charges = plan.chargesAt(planned.moment());
    return charges.stream()
            .map(
                charge ->
                    "%-22s %2d x %2d = %3d"
                        .formatted(name(charge), charge.amount(), charge.weight(), charge.cost()))
            .collect(joining("\n"))
        + "\n%-22s           %3d"
            .formatted("total", charges.stream().mapToLong(Charge::cost).sum());
  }

  private String name(Charge charge) {
    return plan.rules().stream()
        .filter(rule -> rule.rule().equals(charge.rule()))
        .map(RuleCost::name)
        .findFirst()
        .orElseThrow();
  }

  private String search() {
    ImmutableList<ImmutableList<Grip>> grips =
        Planner.of(passage, StandardRules.commonPractice()).grips();
    BigInteger paths = BigInteger.ONE;
    long edges = 0;
    for (int m = 0; m < grips.size(); m++) {
      paths = paths.multiply(BigInteger.valueOf(grips.get(m).size()));
      edges += m == 0 ? 0 : (long) grips.get(m - 1).size() * grips.get(m).size();
    }
    return """
        layers (moments)             %d
        nodes (grips)                %d, here %d
        edges (changes of grip)      %d
        paths from end to end        a number of %d digits
        """
            .formatted(
                grips.size(),
                grips.stream().mapToInt(List::size).sum(),
                grips.get(planned.moment()).size(),
                edges,
                paths.toString().length())
        + comparer.alternatives(plan.brief(), planned.moment(), 3).stream()
            .map(this::alternative)
            .collect(joining("\n"));
  }

  private String alternative(Alternative alternative) {
    Placement placement = alternative.plan().notes().get(index).placement();
    return "%-29s%d points"
        .formatted(
            "best path with %s on %s, %s"
                .formatted(
                    placement.finger().symbol(),
                    RomanNumeral.of(placement.string()),
                    placement.frame().position().display()),
            alternative.plan().total());
  }

  /** The indented blocks of the page, without their indentation. */
  private static List<String> blocks() throws IOException {
    List<String> blocks = new ArrayList<>();
    String last = "";
    for (String line : Files.readAllLines(DOCS.resolve("contributing/architecture.md"))) {
      if (line.startsWith("    ")) {
        if (last.startsWith("    ")) {
          blocks.set(blocks.size() - 1, blocks.get(blocks.size() - 1) + "\n" + line.substring(4));
        } else {
          blocks.add(line.substring(4));
        }
      }
      last = line;
    }
    List<String> all = new ArrayList<>(blocks);
    all.set(0, flush(all.get(0)));
    all.set(all.size() - 1, flush(all.get(all.size() - 1)));
    return all;
  }

  private static String flush(String xml) {
    return xml.lines().map(String::strip).collect(joining("\n"));
  }
}
