package fingering.cli;

import com.google.common.io.ByteSource;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Good scores, and damaged copies of them. */
final class DamagedScores {
  private static final Path DOCS = Path.of("..", "docs");
  private static final int MEASURES = 6;
  // Finding a factory takes longer than writing a score.
  private static final TransformerFactory WRITERS = TransformerFactory.newInstance();
  private static final String CONTAINER =
      "<container><rootfiles><rootfile full-path=\"s.xml\"/></rootfiles></container>";

  /** The file format of a score. */
  private enum Form {
    PLAIN,
    UTF_16,
    ARCHIVE
  }

  /**
   * A damaged score.
   *
   * @param ending the ending of its file name
   * @param bytes its content
   */
  record Damaged(String ending, ByteSource bytes) {}

  private final List<Document> scores;

  private DamagedScores(List<Document> scores) {
    this.scores = scores;
  }

  /** The first measures of the demo and the examples, and a score with all kinds of signs. */
  static DamagedScores load() throws IOException {
    Document signs;
    Document timewise;
    try (InputStream in = DamagedScores.class.getResourceAsStream("signs.musicxml")) {
      signs = parse(in.readAllBytes());
      timewise = timewise(signs);
    }
    return new DamagedScores(
        List.of(
            signs,
            signs,
            timewise,
            shortened(DOCS.resolve("demo/demo.musicxml")),
            shortened(DOCS.resolve("examples/mill.musicxml")),
            shortened(DOCS.resolve("examples/song.musicxml"))));
  }

  /** A damaged score; the same random numbers give the same score. */
  Damaged damaged(Random random) {
    Document score = scores.get(random.nextInt(scores.size()));
    Form form =
        switch (random.nextInt(8)) {
          case 0, 1 -> Form.ARCHIVE;
          case 2 -> Form.UTF_16;
          default -> Form.PLAIN;
        };
    String ending = form == Form.ARCHIVE ? ".mxl" : ".musicxml";
    if (random.nextInt(5) < 2) {
      byte[] other = encoded(scores.get(random.nextInt(scores.size())), Form.PLAIN);
      byte[] damaged = DamagedBytes.damage(encoded(score, form), other, random);
      return new Damaged(ending, ByteSource.wrap(damaged));
    }
    return new Damaged(ending, ByteSource.wrap(encoded(DamagedXml.damage(score, random), form)));
  }

  private static Document shortened(Path file) throws IOException {
    Document score = parse(Files.readAllBytes(file));
    NodeList parts = score.getElementsByTagName("part");
    for (int i = 0; i < parts.getLength(); i++) {
      Element part = (Element) parts.item(i);
      NodeList measures = part.getElementsByTagName("measure");
      while (measures.getLength() > MEASURES) {
        part.removeChild(measures.item(MEASURES));
      }
    }
    return score;
  }

  /** The same score in the form score-timewise. */
  private static Document timewise(Document partwise) {
    Document score = (Document) partwise.cloneNode(true);
    Element root = score.getDocumentElement();
    NodeList parts = score.getElementsByTagName("part");
    List<Element> measures = new ArrayList<>();
    for (int p = 0; p < parts.getLength(); p++) {
      Element part = (Element) parts.item(p);
      NodeList music = part.getElementsByTagName("measure");
      for (int m = 0; m < music.getLength(); m++) {
        if (p == 0) {
          measures.add((Element) music.item(m).cloneNode(false));
        }
        Element within = (Element) part.cloneNode(false);
        Node copy = music.item(m).cloneNode(true);
        while (copy.hasChildNodes()) {
          within.appendChild(copy.getFirstChild());
        }
        measures.get(m).appendChild(within);
      }
    }
    while (parts.getLength() > 0) {
      root.removeChild(parts.item(0));
    }
    measures.forEach(root::appendChild);
    score.renameNode(root, null, "score-timewise");
    return score;
  }

  private static Document parse(byte[] xml) throws IOException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    try {
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml));
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException(e);
    }
  }

  private static byte[] encoded(Document score, Form form) {
    try {
      byte[] xml = written(score, form == Form.UTF_16 ? "UTF-16" : "UTF-8");
      return form == Form.ARCHIVE ? zipped(xml) : xml;
    } catch (TransformerException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static byte[] written(Document score, String encoding) throws TransformerException {
    Transformer transformer = WRITERS.newTransformer();
    transformer.setOutputProperty(OutputKeys.ENCODING, encoding);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    transformer.transform(new DOMSource(score), new StreamResult(out));
    return out.toByteArray();
  }

  private static byte[] zipped(byte[] xml) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
      zip.write(CONTAINER.getBytes(StandardCharsets.UTF_8));
      zip.putNextEntry(new ZipEntry("s.xml"));
      zip.write(xml);
    }
    return out.toByteArray();
  }
}
