package fingering.abc.xml;

import com.google.common.xml.XmlEscapers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** An XML element that is being built. */
final class XmlNode {
  private static final String INDENT = "  ";

  private final String name;
  private final StringBuilder attributes = new StringBuilder();
  private final List<XmlNode> children = new ArrayList<>();
  private String text = "";

  XmlNode(String name) {
    this.name = name;
  }

  /** Adds an attribute and returns this element. */
  XmlNode with(String attribute, Object value) {
    attributes
        .append(' ')
        .append(attribute)
        .append("=\"")
        .append(XmlEscapers.xmlAttributeEscaper().escape(value.toString()))
        .append('"');
    return this;
  }

  /** Adds an empty element and returns it. */
  XmlNode add(String child) {
    XmlNode node = new XmlNode(child);
    children.add(node);
    return node;
  }

  /** Adds an element with text and returns it. */
  XmlNode add(String child, Object content) {
    XmlNode node = add(child);
    node.text = content.toString();
    return node;
  }

  /** Adds an element, unless its content turns out to be empty. */
  void addUnlessEmpty(String child, Consumer<XmlNode> content) {
    XmlNode node = new XmlNode(child);
    content.accept(node);
    if (!node.children.isEmpty()) {
      children.add(node);
    }
  }

  /** Writes the element on separate lines. */
  void write(StringBuilder out, String lead) {
    out.append(lead).append('<').append(name).append(attributes);
    if (children.isEmpty() && text.isEmpty()) {
      out.append("/>\n");
      return;
    }
    out.append('>');
    if (children.isEmpty()) {
      out.append(XmlEscapers.xmlContentEscaper().escape(text));
    } else {
      out.append('\n');
      children.forEach(child -> child.write(out, lead + INDENT));
      out.append(lead);
    }
    out.append("</").append(name).append(">\n");
  }
}
