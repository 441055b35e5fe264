package fingering.musicxml.writing;

import fingering.musicxml.xml.TextEdits;
import fingering.musicxml.xml.XmlElement;
import fingering.musicxml.xml.XmlText;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Removes and inserts elements. New elements are on one line, at the indentation around them. */
final class Cutter {
  private final String xml;
  private final TextEdits edits = new TextEdits();
  private final Set<XmlElement> removed = new HashSet<>();

  Cutter(String xml) {
    this.xml = xml;
  }

  String result() {
    return edits.applyTo(xml);
  }

  /** Removes an element with the line that it is on. */
  void remove(XmlNode node) {
    if (removed.add(node.at())) {
      int start = node.at().start();
      edits.replace(start - lead(node).length(), node.at().end(), "");
    }
  }

  /** Removes a stretch of the text. */
  void remove(int start, int end) {
    edits.replace(start, end, "");
  }

  /** Replaces the text of an element. */
  void text(XmlNode node, String text) {
    edits.replace(node.at().contentStart(), node.at().contentEnd(), text);
  }

  /** Replaces the value of an attribute that is there. */
  void attribute(XmlNode node, String name, String value) {
    int[] place = node.valueOf(name);
    if (place.length == 2) {
      edits.replace(place[0], place[1], value);
    }
  }

  void insertBefore(XmlNode node, String element) {
    // Before the indentation, which is removed with the node.
    String lead = lead(node);
    edits.insert(node.at().start() - lead.length(), lead + element);
  }

  void insertAfter(XmlNode node, String element) {
    edits.insert(node.at().end(), lead(node) + element);
  }

  /** The line break and indentation before an element; "" if it follows another on its line. */
  private String lead(XmlNode node) {
    return XmlText.leadBefore(xml, node.at().start());
  }

  /** Adds an element at the end of a parent. */
  void append(XmlNode parent, String element) {
    int children = parent.children().size();
    if (children > 0) {
      insertAfter(parent.children().get(children - 1), element);
    } else if (parent.at().selfClosing()) {
      int end = parent.at().end();
      edits.replace(end - "/>".length(), end, ">" + element + "</" + parent.name() + ">");
    } else {
      edits.insert(parent.at().contentStart(), element);
    }
  }

  /** Adds a notation to a note. */
  void notation(XmlNode note, String notation) {
    Optional<XmlNode> notations =
        note.all("notations")
            .filter(each -> !each.attribute("print-object").equals("no"))
            .findFirst();
    if (notations.isPresent()) {
      append(notations.get(), notation);
      return;
    }
    String wrapped = "<notations>" + notation + "</notations>";
    Optional<XmlNode> next =
        note.children().stream()
            .filter(child -> child.is("lyric") || child.is("play") || child.is("listen"))
            .findFirst();
    if (next.isPresent()) {
      insertBefore(next.get(), wrapped);
    } else {
      append(note, wrapped);
    }
  }
}
