package fingering.musicxml.marking;

import fingering.musicxml.marking.NoteElement.NotationsElement;
import fingering.musicxml.marking.NoteElement.SlurElement;
import fingering.musicxml.xml.TextEdits;
import fingering.musicxml.xml.XmlElement;
import fingering.musicxml.xml.XmlElement.Children;
import fingering.musicxml.xml.XmlElement.Leaf;
import fingering.musicxml.xml.XmlText;
import fingering.tables.RomanNumeral;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Converts the marks of one note to edits of the text. New elements follow the layout around them:
 * a "lead" is the line break and indentation before an element, "" if elements follow each other on
 * one line.
 */
final class NoteMarker {

  private final String xml;
  private final TextEdits edits;
  private final NoteElement element;
  private final String unit;

  NoteMarker(String xml, TextEdits edits, NoteElement element) {
    this.xml = xml;
    this.edits = edits;
    this.element = element;
    this.unit = unitOf(element.note);
  }

  /**
   * Adds the edits for one note.
   *
   * @param marks the marks
   * @param head the note before which words are inserted: the first of the chord, or the note
   *     itself
   * @param height the height of the lowest line of words above the staff, in tenths
   */
  void mark(NoteMarks marks, XmlElement head, int height) {
    int next = height;
    if (marks.numeral().isPresent()) {
      String numeral = RomanNumeral.of(marks.numeral().getAsInt());
      edits.insert(head.start(), direction(numeral, head, next));
      next += StaffHeights.LINE;
    }
    if (marks.words().isPresent()) {
      edits.insert(head.start(), direction(marks.words().get(), head, next));
    }
    List<String> added = new ArrayList<>();
    marks.finger().filter(finger -> !updateFinger(finger)).map(this::finger).ifPresent(added::add);
    if (marks.string().isPresent()) {
      String number = Integer.toString(marks.string().getAsInt());
      if (!updateString(number)) {
        added.add("<string>" + number + "</string>");
      }
    }
    if (!added.isEmpty()) {
      addTechnical(added);
    }
  }

  /**
   * Removes and adds slurs.
   *
   * @param off slurs of the note to remove
   * @param added new slur elements
   */
  void slurs(List<SlurElement> off, List<String> added) {
    List<SlurElement> removed = new ArrayList<>(off);
    List<String> text = new ArrayList<>(added);
    while (!removed.isEmpty() && !text.isEmpty()) {
      XmlElement old = removed.remove(0).element();
      edits.replace(old.start(), old.end(), text.remove(0));
    }
    if (!text.isEmpty()) {
      if (element.notations().isPresent()) {
        append(element.notations().get(), lead -> String.join(lead, text));
      } else {
        addNotations(lead -> wrap("notations", text, lead));
      }
    }
    for (int i = 0; i < element.allNotations().size(); i++) {
      int index = i;
      NotationsElement notations = element.allNotations().get(i);
      List<SlurElement> here = removed.stream().filter(s -> s.notations() == index).toList();
      if (here.size() == notations.size()) {
        remove(notations.element());
      } else {
        here.forEach(slur -> remove(slur.element()));
      }
    }
  }

  private void remove(XmlElement old) {
    String lead = XmlText.leadBefore(xml, old.start());
    edits.replace(old.start() - lead.length(), old.end(), "");
  }

  private String finger(String finger) {
    return finger.equals("T") ? "<thumb-position/>" : "<fingering>" + finger + "</fingering>";
  }

  /** Changes a finger that the note already shows; returns false if it shows none. */
  private boolean updateFinger(String finger) {
    Optional<Leaf> fingering = element.fingering();
    boolean open = element.openString().isPresent();
    boolean thumb = element.thumb().isPresent();
    if (fingering.isEmpty() && !open && !thumb) {
      return false;
    }
    boolean same =
        fingering.filter(leaf -> leaf.text().equals(finger)).isPresent()
            || (open && finger.equals("0"))
            || (thumb && finger.equals("T"));
    if (same) {
      return true;
    }
    // One mark is changed to the new finger; signs that contradict it are removed.
    List<XmlElement> signs = new ArrayList<>();
    element.openString().ifPresent(signs::add);
    element.thumb().ifPresent(signs::add);
    if (fingering.isEmpty()) {
      XmlElement sign = signs.remove(0);
      edits.replace(sign.start(), sign.end(), finger(finger));
    } else if (finger.equals("T")) {
      XmlElement element = fingering.get().element();
      edits.replace(element.start(), element.end(), finger(finger));
    } else {
      replaceText(fingering.get(), finger);
    }
    signs.forEach(this::remove);
    return true;
  }

  /** Changes a string number that the note already shows; returns false if it shows none. */
  private boolean updateString(String number) {
    element
        .string()
        .filter(leaf -> !leaf.text().equals(number))
        .ifPresent(leaf -> replaceText(leaf, number));
    return element.string().isPresent();
  }

  private void replaceText(Leaf leaf, String text) {
    XmlElement element = leaf.element();
    if (element.selfClosing()) {
      closeWithTag(element, text);
      return;
    }
    int start = leaf.textStart();
    int end = leaf.textEnd();
    while (start < end && XmlText.isSpace(xml.charAt(start))) {
      start++;
    }
    while (end > start && XmlText.isSpace(xml.charAt(end - 1))) {
      end--;
    }
    edits.replace(start, end, text);
  }

  private void addTechnical(List<String> added) {
    if (element.technical().isPresent()) {
      XmlElement technical = element.technical().get();
      append(technical, lead -> String.join(lead, added));
    } else if (element.notations().isPresent()) {
      append(element.notations().get(), lead -> wrap("technical", added, lead));
    } else {
      addNotations(
          lead -> wrap("notations", List.of(wrap("technical", added, deeper(lead))), lead));
    }
  }

  private void addNotations(UnaryOperator<String> content) {
    Optional<XmlElement> before = element.beforeNotations();
    Children children = element.note.children();
    if (before.isPresent()) {
      String lead = XmlText.leadBefore(xml, before.get().start());
      edits.insert(before.get().end(), lead + content.apply(lead));
    } else if (children.any()) {
      String lead = XmlText.leadBefore(xml, children.firstStart());
      edits.insert(element.note.contentStart(), lead + content.apply(lead));
    } else {
      append(element.note, content);
    }
  }

  /** Adds content at the end of a parent; the function returns the content for a lead. */
  private void append(XmlElement parent, UnaryOperator<String> content) {
    Children children = parent.children();
    if (children.any()) {
      String lead = XmlText.leadBefore(xml, children.lastStart());
      edits.insert(children.lastEnd(), lead + content.apply(lead));
      return;
    }
    String outer = XmlText.leadBefore(xml, parent.start());
    String lead = deeper(outer);
    if (parent.selfClosing()) {
      closeWithTag(parent, lead + content.apply(lead) + outer);
    } else {
      boolean endTagOnOwnLine = !XmlText.leadBefore(xml, parent.contentEnd()).isEmpty();
      edits.insert(
          parent.contentStart(), lead + content.apply(lead) + (endTagOnOwnLine ? "" : outer));
    }
  }

  /** Replaces {@code <name/>} by {@code <name>content</name>}. */
  private void closeWithTag(XmlElement element, String content) {
    edits.replace(
        element.end() - "/>".length(), element.end(), ">" + content + "</" + element.name() + ">");
  }

  private String direction(String words, XmlElement head, int height) {
    String outer = XmlText.leadBefore(xml, head.start());
    Children children = head.children();
    boolean ownLines = children.any() && !XmlText.leadBefore(xml, children.firstStart()).isEmpty();
    String lead = ownLines ? outer : "";
    List<String> parts = new ArrayList<>();
    String text = "<words default-y=\"" + height + "\">" + XmlText.escape(words) + "</words>";
    parts.add(wrap("direction-type", List.of(text), deeper(lead)));
    if (!element.voice().isEmpty()) {
      parts.add("<voice>" + XmlText.escape(element.voice()) + "</voice>");
    }
    if (!element.staff().isEmpty()) {
      parts.add("<staff>" + XmlText.escape(element.staff()) + "</staff>");
    }
    String direction = wrap("direction", parts, lead);
    return "<direction placement=\"above\"" + direction.substring("<direction".length()) + outer;
  }

  private String wrap(String name, List<String> children, String lead) {
    StringBuilder out = new StringBuilder("<").append(name).append('>');
    for (String child : children) {
      out.append(deeper(lead)).append(child);
    }
    return out.append(lead).append("</").append(name).append('>').toString();
  }

  private String deeper(String lead) {
    return lead.isEmpty() ? "" : lead + unit;
  }

  private String unitOf(XmlElement note) {
    String outer = XmlText.leadBefore(xml, note.start());
    if (outer.isEmpty() || !note.children().any()) {
      return "";
    }
    String inner = XmlText.leadBefore(xml, note.children().firstStart());
    return inner.startsWith(outer) ? inner.substring(outer.length()) : "";
  }
}
