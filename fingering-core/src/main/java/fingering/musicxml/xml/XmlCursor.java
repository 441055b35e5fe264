package fingering.musicxml.xml;

import com.ctc.wstx.api.WstxInputProperties;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.xml.XmlElement.Children;
import fingering.musicxml.xml.XmlElement.Leaf;
import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLResolver;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Reads XML text once, forward, and reports the position of each element in the text. It loads
 * nothing from outside the text and expands no entities that the document declares. Names include
 * their prefix, so an undeclared prefix does no harm. Not thread-safe.
 */
public final class XmlCursor {

  private final String xml;
  private final XMLStreamReader2 reader;

  /**
   * Opens the text and moves to its root element.
   *
   * @throws UnreadableScoreException if the text is not well-formed up to there
   */
  public XmlCursor(String xml) {
    this.xml = xml;
    try {
      reader = (XMLStreamReader2) factory().createXMLStreamReader(new StringReader(xml));
      while (reader.getEventType() != XMLStreamConstants.START_ELEMENT) {
        reader.next();
      }
    } catch (XMLStreamException e) {
      throw UnreadableScoreException.malformed(e);
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XmlParsers.factory();
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    XMLResolver empty = (publicId, systemId, base, namespace) -> new StringReader("");
    factory.setProperty(WstxInputProperties.P_UNDECLARED_ENTITY_RESOLVER, empty);
    return factory;
  }

  /** Returns the name of the element whose start tag the cursor is on. */
  public String name() {
    return reader.getLocalName();
  }

  /** Returns whether that start tag has the attribute with exactly this value. */
  public boolean has(String attribute, String value) {
    return value.equals(reader.getAttributeValue(null, attribute));
  }

  /** Returns the value of an attribute of that start tag, "" if it is absent. */
  public String attribute(String attribute) {
    String value = reader.getAttributeValue(null, attribute);
    return value == null ? "" : value;
  }

  /** Returns the line on which that start tag begins, from 1. */
  public int line() {
    return reader.getLocationInfo().getStartLocation().getLineNumber();
  }

  /** Reads one child element and must leave the cursor on the child's end tag. */
  @FunctionalInterface
  public interface ChildReader {
    XmlElement read(String name);
  }

  /**
   * Reads the element whose start tag the cursor is on, to its end.
   *
   * @param childReader called on the start tag of every child element
   * @throws UnreadableScoreException if the text is not well-formed up to there
   */
  public XmlElement element(ChildReader childReader) {
    String name = name();
    int start = checkTag(startOffset(), "<", name);
    int contentStart = checkTagEnd(endOffset());
    boolean selfClosing = selfClosing();
    Children children = Children.NONE;
    for (int event = next(); event != XMLStreamConstants.END_ELEMENT; event = next()) {
      if (event == XMLStreamConstants.START_ELEMENT) {
        children = children.and(childReader.read(name()));
      }
    }
    return finish(name, start, contentStart, selfClosing, children);
  }

  /** Skips the element whose start tag the cursor is on. */
  public XmlElement skip() {
    String name = name();
    int start = checkTag(startOffset(), "<", name);
    int contentStart = checkTagEnd(endOffset());
    boolean selfClosing = selfClosing();
    int depth = 1;
    while (depth > 0) {
      int event = next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        depth++;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      }
    }
    return finish(name, start, contentStart, selfClosing, Children.NONE);
  }

  /** Reads the element whose start tag the cursor is on, and its own text. */
  public Leaf leaf() {
    String name = name();
    int start = checkTag(startOffset(), "<", name);
    int contentStart = checkTagEnd(endOffset());
    boolean selfClosing = selfClosing();
    StringBuilder text = new StringBuilder();
    int textStart = -1;
    int textEnd = contentStart;
    for (int event = next(); event != XMLStreamConstants.END_ELEMENT; event = next()) {
      if (event == XMLStreamConstants.START_ELEMENT) {
        skip();
      } else if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
        text.append(reader.getText());
        textStart = textStart < 0 ? startOffset() : textStart;
        textEnd = endOffset();
      }
    }
    XmlElement element = finish(name, start, contentStart, selfClosing, Children.NONE);
    return new Leaf(
        element, text.toString().strip(), textStart < 0 ? contentStart : textStart, textEnd);
  }

  /** Reads to the end of the text, to check that all of it is well-formed. */
  public void finishDocument() {
    try {
      while (reader.hasNext()) {
        reader.next();
      }
    } catch (XMLStreamException e) {
      throw UnreadableScoreException.malformed(e);
    }
  }

  private XmlElement finish(
      String name, int start, int contentStart, boolean selfClosing, Children children) {
    if (selfClosing) {
      return new XmlElement(name, start, contentStart, contentStart, contentStart, true, children);
    }
    int contentEnd = checkTag(startOffset(), "</", name);
    int end = checkTagEnd(endOffset());
    return new XmlElement(name, start, contentStart, contentEnd, end, false, children);
  }

  private int next() {
    try {
      return reader.next();
    } catch (XMLStreamException e) {
      throw UnreadableScoreException.malformed(e);
    }
  }

  private boolean selfClosing() {
    try {
      return reader.isEmptyElement();
    } catch (XMLStreamException e) {
      throw UnreadableScoreException.malformed(e);
    }
  }

  private int startOffset() {
    return Math.toIntExact(reader.getLocationInfo().getStartingCharOffset());
  }

  private int endOffset() {
    try {
      return Math.toIntExact(reader.getLocationInfo().getEndingCharOffset());
    } catch (XMLStreamException e) {
      throw UnreadableScoreException.malformed(e);
    }
  }

  // The parser's offsets decide where the text is edited, so each is checked against the text.
  private int checkTag(int offset, String bracket, String name) {
    if (!xml.startsWith(bracket, offset) || !xml.startsWith(name, offset + bracket.length())) {
      throw new IllegalStateException(
          "No tag %s%s at character %d".formatted(bracket, name, offset));
    }
    return offset;
  }

  private int checkTagEnd(int offset) {
    if (offset < 1 || xml.charAt(offset - 1) != '>') {
      throw new IllegalStateException("No tag ends at character %d".formatted(offset));
    }
    return offset;
  }
}
