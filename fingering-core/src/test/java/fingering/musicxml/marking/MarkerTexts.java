package fingering.musicxml.marking;

import fingering.music.NoteAddress;
import java.io.StringReader;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Small invented scores, marks, and counts of elements, for the tests of this package. */
public final class MarkerTexts {

  private MarkerTexts() {}

  /** A score of one part with one measure that contains these notes, unchanged. */
  public static String measure(String notes) {
    return "<score-partwise><part id=\"P1\"><measure number=\"1\">"
        + notes
        + "</measure></part></score-partwise>";
  }

  public static NoteAddress at(int part, int measure, int note) {
    return new NoteAddress(part, measure, note);
  }

  public static NoteMarks finger(int note, String finger) {
    return new NoteMarks(
        at(0, 0, note), Optional.of(finger), OptionalInt.empty(), Optional.empty());
  }

  public static NoteMarks string(int note, int string) {
    return new NoteMarks(
        at(0, 0, note), Optional.empty(), OptionalInt.of(string), Optional.empty());
  }

  public static NoteMarks words(int note, String words) {
    return new NoteMarks(at(0, 0, note), Optional.empty(), OptionalInt.empty(), Optional.of(words));
  }

  public static NoteMarks all(NoteAddress note, String finger, int string, String words) {
    return new NoteMarks(note, Optional.of(finger), OptionalInt.of(string), Optional.of(words));
  }

  /** How often each element ("name") and each attribute ("name@attribute=value") occurs. */
  public static Map<String, Integer> counts(String xml) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(xml));
    Map<String, Integer> counts = new HashMap<>();
    while (reader.hasNext()) {
      if (reader.next() == XMLStreamConstants.START_ELEMENT) {
        String name = reader.getLocalName();
        counts.merge(name, 1, Integer::sum);
        for (int i = 0; i < reader.getAttributeCount(); i++) {
          String attribute = reader.getAttributeLocalName(i) + "=" + reader.getAttributeValue(i);
          counts.merge(name + "@" + attribute, 1, Integer::sum);
        }
      }
    }
    return counts;
  }

  /** The growth from {@code before} to {@code after}; negative for a loss. */
  public static Map<String, Integer> growth(String before, String after) throws XMLStreamException {
    Map<String, Integer> growth = counts(after);
    counts(before).forEach((what, count) -> growth.merge(what, -count, Integer::sum));
    growth.values().removeIf(count -> count == 0);
    return growth;
  }
}
