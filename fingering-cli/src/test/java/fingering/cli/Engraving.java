package fingering.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** A score file read without any help of the program: what stands in it, and what sounds. */
final class Engraving {
  /** A note that is struck. */
  record Sounding(String measure, double onset, String written, int midi) {
    @Override
    public String toString() {
      return String.format(Locale.ROOT, "m. %s +%.5f %s %d", measure, onset, written, midi);
    }
  }

  private Engraving() {}

  /** How often each element, attribute and text stands in the file, under its parent. */
  static Map<String, Integer> counts(Path file) {
    Map<String, Integer> counts = new TreeMap<>();
    Deque<String> open = new ArrayDeque<>();
    walk(
        file,
        xml -> {
          if (xml.isStartElement()) {
            String key = (open.isEmpty() ? "" : open.peek()) + "/" + xml.getLocalName();
            counts.merge(key, 1, Integer::sum);
            for (int i = 0; i < xml.getAttributeCount(); i++) {
              String name = xml.getAttributeLocalName(i) + "=" + xml.getAttributeValue(i);
              counts.merge(key + "@" + name, 1, Integer::sum);
            }
            open.push(xml.getLocalName());
          } else if (xml.isEndElement()) {
            open.pop();
          } else if (xml.isCharacters() && !xml.isWhiteSpace()) {
            String leaf = open.pop();
            counts.merge(open.peek() + "/" + leaf + "#" + xml.getText().strip(), 1, Integer::sum);
            open.push(leaf);
          }
        });
    return counts;
  }

  /** The notes struck in a one-voiced part without grace notes, chords from below. */
  static List<Sounding> sounding(Path file) {
    Reader reader = new Reader();
    walk(file, reader::read);
    reader.notes.sort(
        Comparator.comparingInt((Sounding note) -> Integer.parseInt(note.measure()))
            .thenComparingDouble(Sounding::onset)
            .thenComparingInt(Sounding::midi));
    return reader.notes;
  }

  private static final class Reader {
    private final List<Sounding> notes = new ArrayList<>();
    private final Map<String, String> note = new TreeMap<>();
    private final StringBuilder text = new StringBuilder();
    private String measure = "";
    private int divisions;
    private int start;
    private int now;

    void read(XMLStreamReader xml) {
      if (xml.isCharacters()) {
        text.append(xml.getText());
      } else if (xml.isStartElement()) {
        text.setLength(0);
        switch (xml.getLocalName()) {
          case "measure" -> {
            measure = xml.getAttributeValue(null, "number");
            start = 0;
            now = 0;
          }
          case "note" -> note.clear();
          case "tie" -> note.put("tie-" + xml.getAttributeValue(null, "type"), "");
          default -> {}
        }
      } else if (xml.isEndElement()) {
        switch (xml.getLocalName()) {
          case "divisions" -> divisions = Integer.parseInt(text.toString().strip());
          case "note" -> endOfNote();
          default -> note.put(xml.getLocalName(), text.toString().strip());
        }
      }
    }

    private void endOfNote() {
      if (!note.containsKey("chord")) {
        start = now;
        now += Integer.parseInt(note.get("duration"));
      }
      if (note.containsKey("rest") || note.containsKey("tie-stop")) {
        return;
      }
      int alter = Integer.parseInt(note.getOrDefault("alter", "0"));
      String sign = alter < 0 ? "b".repeat(-alter) : "#".repeat(alter);
      int octave = Integer.parseInt(note.get("octave"));
      int step = List.of(0, 2, 4, 5, 7, 9, 11).get("CDEFGAB".indexOf(note.get("step")));
      notes.add(
          new Sounding(
              measure,
              (double) start / divisions,
              note.get("step") + sign + octave,
              12 * (octave + 1) + step + alter));
    }
  }

  @FunctionalInterface
  private interface Visitor {
    void at(XMLStreamReader xml);
  }

  private static void walk(Path file, Visitor visitor) {
    XMLInputFactory factory = XMLInputFactory.newInstance();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try (InputStream in = Files.newInputStream(file)) {
      XMLStreamReader xml = factory.createXMLStreamReader(in);
      while (xml.next() != XMLStreamConstants.END_DOCUMENT) {
        visitor.at(xml);
      }
    } catch (IOException | XMLStreamException e) {
      throw new AssertionError(e);
    }
  }
}
