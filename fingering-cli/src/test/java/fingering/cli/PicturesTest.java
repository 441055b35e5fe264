package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/**
 * The pictures of the handbook: those made by a command of docs/model.md, and those drawn by hand.
 * With {@code -Dpictures=write} those made by a command are made anew.
 */
final class PicturesTest {
  private static final Path MODEL = DocumentedCommand.DOCS.resolve("model.md");
  private static final Path PICTURES = DocumentedCommand.DOCS.resolve("pictures");
  private static final Pattern SHOWN =
      Pattern.compile("<img src=\"(?:docs/|\\.\\./)?pictures/([^\"]+)\" .*alt=\".+\">");
  private static final Pattern MADE = Pattern.compile(".* --output (\\S+\\.svg)");
  private static final Pattern FINGER =
      Pattern.compile("<circle cx=\"([\\d.]+)\"[^>]* data-mm=\"(\\d+)\"");
  private static final Pattern PATH = Pattern.compile("class=\"path\">([^<]+)<");

  /** In the drawings a millimetre of the string is four units, and the nut is at 60. */
  private static final int NUT = 60;

  private static final int UNITS = 4;

  /** The width in pixels at which a page of the handbook is shown. */
  private static final int WIDEST = 900;

  @TempDir Path folder;

  static List<DocumentedCommand> made() {
    return DocumentedCommand.of(MODEL).stream()
        .filter(shown -> MADE.matcher(shown.command()).matches())
        .toList();
  }

  static List<Path> pictures() throws IOException {
    try (Stream<Path> files = Files.list(PICTURES)) {
      return files.sorted().toList();
    }
  }

  /** Those that are drawn; the others are pictures of a screen. */
  static List<Path> drawings() throws IOException {
    return pictures().stream().filter(picture -> picture.toString().endsWith(".svg")).toList();
  }

  @ParameterizedTest
  @MethodSource("made")
  void pictureMadeByACommandIsUpToDate(DocumentedCommand shown) throws IOException {
    Workplace workplace = new Workplace(folder);
    String name = MADE.matcher(shown.command()).replaceFirst("$1");
    assertThat(workplace.run(shown.command()).succeeded().out()).isEmpty();
    String made = WrittenMark.without(Files.readString(workplace.file(name)));
    if (System.getProperty("pictures", "").equals("write")) {
      Files.writeString(PICTURES.resolve(name), made);
    }
    assertThat(PICTURES.resolve(name)).hasContent(made);
  }

  @Test
  void everyPictureIsShownAndEveryShownPictureExists() throws IOException {
    Set<String> shown = new TreeSet<>();
    for (String page :
        List.of("model.md", "open.md", "page.md", "contributing/architecture.md", "../README.md")) {
      SHOWN
          .matcher(Files.readString(DocumentedCommand.DOCS.resolve(page)))
          .results()
          .forEach(image -> shown.add(image.group(1)));
    }
    assertThat(made()).hasSizeGreaterThan(3);
    assertThat(shown)
        .containsExactlyInAnyOrderElementsOf(
            pictures().stream().map(picture -> picture.getFileName().toString()).toList());
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void pictureIsReadableOnAnyBackground(Path picture) throws Exception {
    Element svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(picture.toFile())
            .getDocumentElement();
    assertThat(Double.parseDouble(svg.getAttribute("width"))).isLessThanOrEqualTo(WIDEST);
    assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isNotBlank();
    assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).isNotBlank();
    Element ground = (Element) svg.getElementsByTagName("rect").item(0);
    if (Files.readString(picture).contains("@media (prefers-color-scheme: dark)")) {
      // Paper and ink change together.
      assertThat(ground.getAttribute("class")).isEqualTo("paper");
      assertThat(Files.readString(picture).split("--paper: #", -1)).hasSize(3);
      assertThat(Files.readString(picture).split("--ink: #", -1)).hasSize(3);
      return;
    }
    assertThat(ground.getAttribute("width") + ground.getAttribute("height")).isEqualTo("100%100%");
    if (ground.hasAttribute("fill")) {
      assertThat(ground.getAttribute("fill")).isEqualTo("#fff");
    } else {
      assertThat(ground.getAttribute("class")).isEqualTo("paper");
      assertThat(Files.readString(picture))
          .contains("--paper:#fff", ".paper{fill:var(--paper)}")
          .doesNotContain("prefers-color-scheme");
    }
  }

  /** Places in equal temperament (ISO 16), as the chart of the viola has them. */
  @Test
  void drawnFingersMatchTheChart() throws IOException {
    List<String> charted =
        Stream.of("1", "3")
            .flatMap(
                position ->
                    Session.of("chart", "viola", "--position", position)
                        .succeeded()
                        .lines()
                        .stream())
            .map(line -> line.strip().replaceFirst(" .*", ""))
            .toList();
    for (String name : List.of("hand-frame.svg", "shift.svg")) {
      List<MatchResult> fingers =
          FINGER.matcher(Files.readString(PICTURES.resolve(name))).results().toList();
      assertThat(fingers).hasSizeGreaterThan(3);
      for (MatchResult finger : fingers) {
        assertThat(charted).contains(finger.group(2));
        assertThat(Double.parseDouble(finger.group(1)))
            .isCloseTo(NUT + UNITS * Double.parseDouble(finger.group(2)), within(2.0));
      }
    }
  }

  @Test
  void boldPathIsThatOfThePlan() throws IOException {
    List<String> drawn =
        PATH.matcher(Files.readString(PICTURES.resolve("layered-graph.svg")))
            .results()
            .map(box -> box.group(1))
            .toList();
    List<String> planned =
        Session.entries(
                Session.of("plan", Session.DEMO, "--choose", "third", "--format", "json")
                    .json()
                    .get("notes"))
            .stream()
            .filter(note -> note.get("measure").asText().equals("17"))
            .map(
                note ->
                    "I".repeat(note.get("string").asInt())
                        + " %s %srd"
                            .formatted(note.get("finger").asText(), note.get("position").asText()))
            .toList();
    assertThat(drawn).isEqualTo(planned);
  }
}
