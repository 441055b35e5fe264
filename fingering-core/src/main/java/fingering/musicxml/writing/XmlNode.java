package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * An element with its children, and its position in the text.
 *
 * @param xml the whole text
 * @param at its position
 * @param children its child elements
 */
record XmlNode(String xml, XmlElement at, ImmutableList<XmlNode> children) {
  /** The id of an element must not appear twice, so copies leave it out. */
  private static final Pattern ID = Pattern.compile("\\s+id\\s*=\\s*(\"[^\"]*\"|'[^']*')");

  /** Reads the element whose start tag the cursor is on. */
  static XmlNode read(XmlCursor cursor, String xml) {
    ImmutableList.Builder<XmlNode> children = ImmutableList.builder();
    XmlElement at =
        cursor.element(
            name -> {
              XmlNode child = read(cursor, xml);
              children.add(child);
              return child.at;
            });
    return new XmlNode(xml, at, children.build());
  }

  String name() {
    return at.name();
  }

  boolean is(String name) {
    return at.name().equals(name);
  }

  /** The children with a name. */
  Stream<XmlNode> all(String name) {
    return children.stream().filter(child -> child.is(name));
  }

  /** The first child with a name. */
  Optional<XmlNode> first(String name) {
    return all(name).findFirst();
  }

  boolean has(String name) {
    return first(name).isPresent();
  }

  /** The text of the first child with a name; "" if there is none. */
  String textOf(String name) {
    return first(name).map(XmlNode::text).orElse("");
  }

  /** Its own text as written in the file. */
  String text() {
    return xml.substring(at.contentStart(), at.contentEnd()).strip();
  }

  /** The whole element as written in the file, without an id. */
  String copy() {
    return tag() + xml.substring(at.contentStart(), at.end());
  }

  /** Its start tag, without an id. */
  String tag() {
    return ID.matcher(xml.substring(at.start(), at.contentStart())).replaceAll("");
  }

  /** The value of an attribute; "" if it is absent. */
  String attribute(String name) {
    int[] place = valueOf(name);
    return place.length == 0 ? "" : xml.substring(place[0], place[1]);
  }

  /** Where the value of an attribute begins and ends in the text; empty if it is absent. */
  int[] valueOf(String name) {
    Matcher matcher =
        Pattern.compile("\\s" + name + "\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)')")
            .matcher(xml)
            .region(at.start(), at.contentStart());
    if (!matcher.find()) {
      return new int[0];
    }
    int group = matcher.group(1) == null ? 2 : 1;
    return new int[] {matcher.start(group), matcher.end(group)};
  }

  /** The value of an attribute with its name, to be written after other attributes, or "". */
  String attributeCopy(String name) {
    String value = attribute(name);
    return value.isEmpty() ? "" : " " + name + "=\"" + value + "\"";
  }
}
