package fingering.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Damages the structure of a score but keeps it well-formed XML, like faulty programs. */
final class DamagedXml {
  private static final int MAX_CHANGES = 4;
  private static final int MAX_DEPTH = 150;

  /** Texts to put where a number, a name or nothing belongs. */
  private static final List<String> TEXTS =
      List.of(
          "0",
          "-1",
          "1",
          "7",
          "64",
          "2147483647",
          "2147483648",
          "-2147483648",
          "9223372036854775808",
          "1e40",
          "1e999999999",
          "-0.5",
          "0.1",
          "1/3",
          "1e-30",
          "999999999999999999999999999999",
          "NaN",
          "",
          "  ",
          "x",
          "½",
          "yes",
          "start",
          "stop",
          "G",
          "quarter",
          "a\nb\tc",
          "long ".repeat(300),
          "\uD834\uDD1E\u202E");

  /** Elements that change the meaning of their neighbours. */
  private static final List<String> NAMES =
      List.of(
          "chord",
          "grace",
          "cue",
          "rest",
          "backup",
          "forward",
          "duration",
          "divisions",
          "voice",
          "tie",
          "tied",
          "slur",
          "harmonic",
          "natural",
          "artificial",
          "time",
          "beats",
          "beat-type",
          "transpose",
          "octave-change",
          "chromatic",
          "clef",
          "sign",
          "line",
          "measure",
          "part",
          "note",
          "pitch",
          "step",
          "octave",
          "alter",
          "unpitched",
          "string",
          "fingering",
          "metronome",
          "beat-unit",
          "per-minute",
          "sound",
          "repeat",
          "ending",
          "tuplet",
          "staves",
          "staff",
          "key",
          "fifths",
          "score-part",
          "part-list",
          "trill-mark",
          "direction",
          "words");

  private final Document score;
  private final Random random;

  private DamagedXml(Document score, Random random) {
    this.score = score;
    this.random = random;
  }

  /** The score with one to four changes. */
  static Document damage(Document whole, Random random) {
    DamagedXml mutations = new DamagedXml((Document) whole.cloneNode(true), random);
    int changes = 1 + random.nextInt(MAX_CHANGES);
    for (int i = 0; i < changes; i++) {
      mutations.once();
    }
    return mutations.score;
  }

  private void once() {
    Element one = any();
    switch (random.nextInt(10)) {
      case 0 -> remove(one);
      case 1 -> repeat(one);
      case 2 -> move(one);
      case 3, 4, 5 -> text(leaf());
      case 6 -> attribute(one);
      case 7 -> score.renameNode(one, null, NAMES.get(random.nextInt(NAMES.size())));
      case 8 -> nest(one);
      default -> one.insertBefore(fresh(), child(one));
    }
  }

  private Element any() {
    NodeList all = score.getElementsByTagName("*");
    return (Element) all.item(random.nextInt(all.getLength()));
  }

  private Element leaf() {
    Element one = any();
    for (int tries = 0; tries < 20 && one.getElementsByTagName("*").getLength() > 0; tries++) {
      one = any();
    }
    return one;
  }

  private boolean isRoot(Element one) {
    return one == score.getDocumentElement();
  }

  private void remove(Element one) {
    if (!isRoot(one)) {
      one.getParentNode().removeChild(one);
    }
  }

  private void repeat(Element one) {
    if (isRoot(one)) {
      return;
    }
    int times = random.nextInt(8) == 0 ? 100 : 1 + random.nextInt(3);
    for (int i = 0; i < times; i++) {
      one.getParentNode().insertBefore(one.cloneNode(true), one);
    }
  }

  private void move(Element one) {
    Element target = any();
    boolean within =
        (one.compareDocumentPosition(target) & Node.DOCUMENT_POSITION_CONTAINED_BY) != 0;
    if (!isRoot(one) && one != target && !within) {
      target.insertBefore(one, child(target));
    }
  }

  private void text(Element one) {
    one.setTextContent(text());
  }

  private void attribute(Element one) {
    NamedNodeMap attributes = one.getAttributes();
    if (attributes.getLength() == 0) {
      one.setAttribute(List.of("number", "id", "type", "implicit").get(random.nextInt(4)), text());
      return;
    }
    Attr attribute = (Attr) attributes.item(random.nextInt(attributes.getLength()));
    switch (random.nextInt(3)) {
      case 0 -> one.removeAttributeNode(attribute);
      case 1 -> attribute.setValue(text());
      default -> swap(attribute);
    }
  }

  /** Swaps the values of an attribute and another attribute of the same name. */
  private void swap(Attr attribute) {
    List<Attr> others = new ArrayList<>();
    NodeList all = score.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Attr other = ((Element) all.item(i)).getAttributeNode(attribute.getName());
      if (other != null) {
        others.add(other);
      }
    }
    Attr other = others.get(random.nextInt(others.size()));
    String value = other.getValue();
    other.setValue(attribute.getValue());
    attribute.setValue(value);
  }

  /** Wraps an element in empty copies of itself, once or many times. */
  private void nest(Element one) {
    if (isRoot(one)) {
      return;
    }
    int depth = random.nextInt(4) == 0 ? 1 + random.nextInt(MAX_DEPTH) : 1;
    Node inner = one;
    for (int i = 0; i < depth; i++) {
      Node shell = one.cloneNode(false);
      inner.getParentNode().replaceChild(shell, inner);
      shell.appendChild(inner);
      inner = shell;
    }
  }

  private Element fresh() {
    Element fresh = score.createElement(NAMES.get(random.nextInt(NAMES.size())));
    if (random.nextBoolean()) {
      fresh.setTextContent(text());
    }
    return fresh;
  }

  private String text() {
    return TEXTS.get(random.nextInt(TEXTS.size()));
  }

  private Node child(Element parent) {
    NodeList children = parent.getChildNodes();
    return children.getLength() == 0 ? null : children.item(random.nextInt(children.getLength()));
  }
}
