package fingering.musicxml.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.marking.NoteMarks;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.random.ExpectedNotes.Expected;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.InfeasibleBriefException;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.marks.PlanMarks;
import fingering.scoring.rules.StandardRules;
import fingering.tables.RomanNumeral;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSInput;
import org.xml.sax.SAXException;

/**
 * Random scores with everything that the schema of MusicXML allows are read as written, planned,
 * marked, and valid afterwards. {@code -Dmusicxml.schema=FOLDER} names the folder of the schema,
 * {@code -Drandom.scores=2000} the number of scores, {@code -Dseed=7} the seed, and {@code
 * -Drandom.score=12} repeats one.
 */
@Tag("wide")
class RandomScoreTest {
  private static final int SCORES = Integer.getInteger("random.scores", 2000);
  private static final int ONLY = Integer.getInteger("random.score", -1);
  private static final String SEED = System.getProperty("seed", "1");
  private static final int MOST_SHOWN = 20;
  private static final String CONTAINER =
      "<container><rootfiles><rootfile full-path=\"s.xml\"/></rootfiles></container>";

  /** Written by hand, or of no use without other files. */
  private static final Set<String> BY_HAND =
      Set.of("tied", "image", "link", "voice", "staff", "transpose", "for-part", "instrument-link");

  @TempDir Path folder;

  private final List<String> faults = new ArrayList<>();
  private int plans;
  private int notes;

  private static Schema schema(Path folder) throws Exception {
    SchemaFactory factory = SchemaFactory.newInstance("http://www.w3.org/2001/XMLSchema");
    DOMImplementationLS dom =
        (DOMImplementationLS) DOMImplementationRegistry.newInstance().getDOMImplementation("LS");
    // The schema names its other files on the network; here they lie beside it.
    factory.setResourceResolver(
        (type, namespace, publicId, systemId, base) -> {
          LSInput input = dom.createLSInput();
          Path file = folder.resolve(systemId.substring(systemId.lastIndexOf('/') + 1));
          try {
            input.setByteStream(new ByteArrayInputStream(Files.readAllBytes(file)));
          } catch (IOException e) {
            throw new IllegalStateException(e);
          }
          return input;
        });
    return factory.newSchema(folder.resolve("musicxml.xsd").toFile());
  }

  @Test
  void randomScoresAreReadPlannedAndMarked() throws Exception {
    String named = System.getProperty("musicxml.schema", "");
    assumeTrue(!named.isEmpty(), "skipped: name the folder with -Dmusicxml.schema=FOLDER");
    Path schemaFolder = Path.of(named).toAbsolutePath();
    Schema schema = schema(schemaFolder);
    SchemaContent content = new SchemaContent(schemaFolder, BY_HAND);
    long seed = SEED.equals("random") ? System.nanoTime() % 1_000_000 : Long.parseLong(SEED);
    int first = ONLY < 0 ? 0 : ONLY;
    int end = ONLY < 0 ? SCORES : ONLY + 1;
    for (int i = first; i < end && faults.size() < MOST_SHOWN; i++) {
      try {
        one(new RandomScore(new Random(seed * 1_000_003 + i), content), schema, i);
      } catch (RuntimeException | StackOverflowError e) {
        StackTraceElement[] where = e.getStackTrace();
        fault(
            i,
            e
                + Stream.of(where)
                    .limit(12)
                    .map(String::valueOf)
                    .collect(Collectors.joining("\n    at ", "\n    at ", "")));
      }
    }
    System.out.printf(
        "random scores: %d scores of %d kinds of elements, %d notes, %d plans; -Dseed=%d%n",
        end - first, content.used().size(), notes, plans, seed);
    assertThat(faults).isEmpty();
    assertThat(plans).isGreaterThan((end - first) / 2);
  }

  private void fault(int number, String what) {
    String line = "-Drandom.score=%d: %s".formatted(number, what);
    System.out.println(line);
    faults.add(line);
  }

  private static String invalid(Schema schema, String xml) throws IOException {
    try {
      schema.newValidator().validate(new StreamSource(new StringReader(xml)));
      return "";
    } catch (SAXException e) {
      return String.valueOf(e.getMessage());
    }
  }

  private Path written(String xml, int number) throws IOException {
    if (number % 3 != 0) {
      return Files.writeString(folder.resolve(number + ".musicxml"), xml);
    }
    Path file = folder.resolve(number + ".mxl");
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
      zip.write(CONTAINER.getBytes(StandardCharsets.UTF_8));
      zip.putNextEntry(new ZipEntry("s.xml"));
      zip.write(xml.getBytes(StandardCharsets.UTF_8));
    }
    return file;
  }

  private void one(RandomScore random, Schema schema, int number) throws Exception {
    boolean timewise = number % 5 == 0;
    String xml = timewise ? random.timewise() : random.partwise();
    if (ONLY >= 0) {
      System.out.println(xml);
    }
    String wrong = invalid(schema, xml);
    if (!wrong.isEmpty()) {
      throw new IllegalStateException("the generator made " + wrong);
    }
    ScoreFile file = ScoreFile.read(written(xml, number));
    Score score = ScoreReader.read(file);
    for (ExpectedNotes.Part part : random.parts()) {
      if (part.notes().isEmpty()) {
        continue;
      }
      PassageRequest request = PassageRequest.WHOLE.withPart(String.valueOf(part.number()));
      Passage passage = score.passage(request);
      compare(part, passage, number);
      score.printed(passage, request.voice());
      mark(random, file, passage, request, schema, number);
    }
    Files.delete(folder.resolve(number + (number % 3 == 0 ? ".mxl" : ".musicxml")));
  }

  private void compare(ExpectedNotes.Part part, Passage passage, int number) {
    notes += part.notes().size();
    TreeMap<Double, List<String>> expected = new TreeMap<>();
    TreeMap<Double, List<String>> read = new TreeMap<>();
    for (Expected note : part.notes()) {
      expected
          .computeIfAbsent((double) note.start() / ExpectedNotes.UNIT, time -> new ArrayList<>())
          .add(text(note.written(), note.sounding(), (double) note.length() / ExpectedNotes.UNIT));
    }
    for (Note note : passage.notes()) {
      read.computeIfAbsent(note.start().doubleValue(), time -> new ArrayList<>())
          .add(text(note.written().midi(), note.midi(), note.length().doubleValue()));
    }
    part.notes().stream()
        .filter(Expected::loose)
        .map(Expected::start)
        .forEach(part.looseTimes()::add);
    for (int time : part.looseTimes()) {
      expected.remove((double) time / ExpectedNotes.UNIT);
      read.remove((double) time / ExpectedNotes.UNIT);
    }
    expected.values().forEach(list -> list.sort(null));
    read.values().forEach(list -> list.sort(null));
    if (!expected.equals(read)) {
      StringBuilder differences = new StringBuilder();
      expected.forEach(
          (time, list) -> {
            if (!list.equals(read.get(time))) {
              differences.append("\n  at %s: %s, read %s".formatted(time, list, read.get(time)));
            }
          });
      read.keySet().removeAll(expected.keySet());
      fault(number, part.name() + differences + "\n  too many: " + read);
    }
  }

  private static String text(int written, int sounding, double length) {
    return "%d %d %.6f".formatted(written, sounding, length);
  }

  private void mark(
      RandomScore random,
      ScoreFile file,
      Passage passage,
      PassageRequest request,
      Schema schema,
      int number)
      throws Exception {
    PlanComparer comparer =
        PlanComparer.of(
            passage, StandardRules.commonPractice(), LeftHand.MEDIUM, ImmutableSet.of());
    Plan plan;
    try {
      plan = comparer.plan(Brief.free("free"));
    } catch (InfeasibleBriefException e) {
      fault(number, "no plan: " + e.getMessage());
      return;
    }
    plans++;
    ImmutableList<NoteMarks> marks = PlanMarks.of(plan);
    String marked = ScoreMarker.mark(file.text(), marks);
    String wrong = invalid(schema, marked);
    if (!wrong.isEmpty()) {
      fault(number, "the marked score is not valid: " + wrong);
    }
    Passage again = ScoreReader.read(ScoreFile.of(marked, ImmutableList.of())).passage(request);
    if (!texts(again).equals(texts(passage))) {
      fault(number, "marks change notes");
    }
    Set<String> words =
        marks.stream()
            .flatMap(
                mark ->
                    Stream.concat(
                        mark.words().stream(), mark.numeral().stream().mapToObj(RomanNumeral::of)))
            .collect(Collectors.toSet());
    if (!same(without(random.partwise(), Set.of()), without(marked, words))) {
      fault(number, "more than marks has changed");
    }
  }

  private static List<String> texts(Passage passage) {
    return passage.notes().stream()
        .map(note -> "%s %s %s".formatted(note.written(), note.start(), note.length()))
        .toList();
  }

  private static boolean same(Document one, Document other) {
    return one.getDocumentElement().isEqualNode(other.getDocumentElement());
  }

  /** The score without marks and white space. */
  private static Document without(String xml, Set<String> words) throws Exception {
    Document score =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
    strip(score.getDocumentElement(), words);
    return score;
  }

  private static void strip(Element parent, Set<String> words) {
    for (Node child = parent.getFirstChild(); child != null; ) {
      Node next = child.getNextSibling();
      if (child instanceof Element element) {
        strip(element, words);
        if (isMark(element, words)) {
          parent.removeChild(element);
        }
      } else if (child.getTextContent().isBlank()) {
        parent.removeChild(child);
      }
      child = next;
    }
  }

  private static boolean isMark(Element element, Set<String> words) {
    return switch (element.getTagName()) {
      case "fingering", "string", "thumb-position", "open-string" -> true;
      case "technical", "notations" -> !element.hasChildNodes();
      case "direction" ->
          element.getAttribute("placement").equals("above")
              && element.getFirstChild().getFirstChild().getNodeName().equals("words")
              && words.contains(element.getFirstChild().getTextContent());
      default -> false;
    };
  }
}
