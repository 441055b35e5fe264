package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fingering.cli.chart.ChartSvg;
import fingering.cli.chart.ChartWords;
import fingering.cli.chart.SvgPage;
import fingering.fingerboard.Chart;
import fingering.fingerboard.ChartRequest;
import fingering.fingerboard.Fingerboard;
import fingering.tables.Instruments;
import fingering.tables.Key;
import fingering.tables.Position;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

final class ChartSvgTest {
  @TempDir Path folder;

  private static Chart chart(String instrument, ChartRequest request) {
    return Chart.of(Fingerboard.of(Instruments.standard().named(instrument)), request);
  }

  private static List<Chart> charts() {
    List<Chart> charts = new ArrayList<>();
    for (String instrument : List.of("violin", "viola", "cello", "bass")) {
      ChartRequest whole = ChartRequest.whole();
      charts.add(chart(instrument, whole));
      charts.add(chart(instrument, whole.with(Key.parse("g-minor"))));
      charts.add(chart(instrument, whole.on(2)));
      charts.add(chart(instrument, whole.in(Position.FIRST)));
      charts.add(chart(instrument, whole.in(Position.of(7)).with(Key.parse("D-major"))));
      charts.add(chart(instrument, whole.in(Position.HALF).on(1)));
    }
    return charts;
  }

  private static Document parsed(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(svg)));
    } catch (SAXException | IOException | ParserConfigurationException e) {
      throw new AssertionError(e);
    }
  }

  private static List<Element> all(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static List<String> texts(Document document) {
    return all(document, "text").stream().map(Element::getTextContent).toList();
  }

  @Test
  void everyNoteOfAChartIsDrawnWithItsName() {
    for (Chart chart : charts()) {
      List<String> names =
          chart.rows().stream()
              .flatMap(row -> row.cells().stream())
              .filter(cell -> !cell.names().isEmpty())
              .map(cell -> ChartWords.name(cell, true))
              .toList();

      assertThat(texts(parsed(ChartSvg.of(chart)))).containsAll(names);
    }
  }

  @Test
  void everyDrawingStaysWithinItsPicture() {
    for (Chart chart : charts()) {
      Document document = parsed(ChartSvg.of(chart));
      String[] box = document.getDocumentElement().getAttribute("viewBox").split(" ", -1);
      double width = Double.parseDouble(box[2]);
      double height = Double.parseDouble(box[3]);
      for (Element text : all(document, "text")) {
        double x = Double.parseDouble(text.getAttribute("x"));
        double size = Double.parseDouble(text.getAttribute("font-size"));
        assertThat(x).isBetween(0.0, width);
        assertThat(Double.parseDouble(text.getAttribute("y"))).isBetween(0.0, height);
        if (text.getAttribute("text-anchor").equals("start")) {
          // half the size is the width of a letter, on average
          assertThat(x + 0.5 * size * text.getTextContent().length())
              .as(text.getTextContent())
              .isLessThan(width);
        }
      }
    }
  }

  @Test
  void lengthsAlongTheStringAreMillimetres() {
    // 375 mm: from the first semitone, 375 · 0.056126 = 21.05, to the octave, 187.5 (ISO 16)
    List<Element> labels = all(parsed(ChartSvg.of(chart("viola", ChartRequest.whole()))), "circle");
    List<Double> heights =
        labels.stream()
            .map(circle -> Double.parseDouble(circle.getAttribute("cy")))
            .distinct()
            .sorted()
            .toList();

    assertThat(heights.get(12) - heights.get(1)).isCloseTo(187.5 - 21.05, within(0.02));
  }

  @Test
  void ringingNotesHaveADoubleRing() {
    Chart first =
        chart("violin", ChartRequest.whole().in(Position.FIRST).with(Key.parse("D-major")));
    long notes = cells(first, false);
    long ringing = cells(first, true);

    // common practice, no source: the nine ringing notes of first position
    assertThat(ringing).isEqualTo(9);
    assertThat(all(parsed(ChartSvg.of(first)), "circle")).hasSize((int) (notes + ringing));
  }

  private static long cells(Chart chart, boolean ringing) {
    return chart.rows().stream()
        .flatMap(row -> row.cells().stream())
        .filter(cell -> !cell.names().isEmpty() && (!ringing || ChartWords.rings(cell)))
        .count();
  }

  @Test
  void pictureHasADescriptionForScreenReaders() {
    Document document =
        parsed(ChartSvg.of(chart("violin", ChartRequest.whole().in(Position.FIRST))));

    Element root = document.getDocumentElement();
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(all(document, "title").get(0).getTextContent()).isEqualTo("Violin, 1st position");
    assertThat(all(document, "desc").get(0).getTextContent())
        .contains("III D string: D4 open", "E4 finger 1 rings with open I");
  }

  @Test
  void pictureLoadsNothingFromOutside() {
    for (Chart chart : charts()) {
      assertThat(ChartSvg.of(chart).replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
          .doesNotContain("http", "href", "url(", "<script", "<style");
    }
  }

  @Test
  void xmlIsEscaped() {
    assertThat(SvgPage.escaped("a<b & \"c\">")).isEqualTo("a&lt;b &amp; &quot;c&quot;&gt;");
  }

  @Test
  void svgFileEndingSelectsAPicture() throws IOException {
    Path file = folder.resolve("third.svg");

    Session.of("chart", "cello", "--position", "3", "--output", file).succeeded();

    String svg = WrittenMark.without(Files.readString(file));
    assertThat(svg)
        .isEqualTo(
            Session.of("chart", "cello", "--position", "3", "--format", "svg").succeeded().out());
    assertThat(texts(parsed(svg))).contains("Cello, 3rd position");
  }
}
