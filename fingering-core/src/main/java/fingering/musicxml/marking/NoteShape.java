package fingering.musicxml.marking;

import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import fingering.musicxml.xml.XmlElement.Leaf;
import java.util.Optional;

/** A note element as it lies in the text: what a mark has to know of it. */
final class NoteShape {

  /** The note itself. */
  final XmlElement note;

  private boolean chord;
  private String voice = "";
  private String staff = "";
  private Optional<XmlElement> beforeNotations = Optional.empty();
  private boolean pastNotations;
  private Optional<XmlElement> notations = Optional.empty();
  private Optional<XmlElement> technical = Optional.empty();
  private Optional<Leaf> fingering = Optional.empty();
  private Optional<Leaf> string = Optional.empty();
  private Optional<XmlElement> openString = Optional.empty();
  private Optional<XmlElement> thumb = Optional.empty();

  /** Reads the note whose start tag the cursor stands on, to its end. */
  NoteShape(XmlCursor cursor) {
    note = cursor.element(name -> readChild(cursor, name));
  }

  private XmlElement readChild(XmlCursor cursor, String name) {
    switch (name) {
      case "chord" -> chord = true;
      case "voice" -> {
        Leaf leaf = cursor.leaf();
        voice = leaf.text();
        return passed(leaf.element());
      }
      case "staff" -> {
        Leaf leaf = cursor.leaf();
        staff = leaf.text();
        return passed(leaf.element());
      }
      // What is not printed is no place for a mark that is to be seen, and says nothing to print.
      case "notations" -> {
        if (!cursor.has("print-object", "no")) {
          return passed(readNotations(cursor));
        }
      }
      case "lyric", "play", "listen" -> pastNotations = true;
      default -> {}
    }
    return passed(cursor.skip());
  }

  private XmlElement passed(XmlElement child) {
    if (!pastNotations) {
      beforeNotations = Optional.of(child);
    }
    return child;
  }

  private XmlElement readNotations(XmlCursor cursor) {
    XmlElement read =
        cursor.element(name -> name.equals("technical") ? readTechnical(cursor) : cursor.skip());
    notations = notations.or(() -> Optional.of(read));
    return read;
  }

  private XmlElement readTechnical(XmlCursor cursor) {
    XmlElement read = cursor.element(name -> readTechnicalChild(cursor, name));
    technical = technical.or(() -> Optional.of(read));
    return read;
  }

  private XmlElement readTechnicalChild(XmlCursor cursor, String name) {
    switch (name) {
      case "fingering" -> {
        boolean plain = !cursor.has("substitution", "yes") && !cursor.has("alternate", "yes");
        Leaf leaf = cursor.leaf();
        if (plain && fingering.isEmpty()) {
          fingering = Optional.of(leaf);
        }
        return leaf.element();
      }
      case "string" -> {
        Leaf leaf = cursor.leaf();
        string = string.or(() -> Optional.of(leaf));
        return leaf.element();
      }
      case "open-string" -> {
        XmlElement sign = cursor.skip();
        openString = openString.or(() -> Optional.of(sign));
        return sign;
      }
      case "thumb-position" -> {
        XmlElement sign = cursor.skip();
        thumb = thumb.or(() -> Optional.of(sign));
        return sign;
      }
      default -> {
        return cursor.skip();
      }
    }
  }

  /** Whether it sounds with the note before it. */
  boolean chord() {
    return chord;
  }

  /** The text of its voice, "" if it has none. */
  String voice() {
    return voice;
  }

  /** The text of its staff, "" if it has none. */
  String staff() {
    return staff;
  }

  /** The last child that has to stand before new notations. */
  Optional<XmlElement> beforeNotations() {
    return beforeNotations;
  }

  /** The first notations that are printed. */
  Optional<XmlElement> notations() {
    return notations;
  }

  /** The first technical element in notations that are printed. */
  Optional<XmlElement> technical() {
    return technical;
  }

  /** The first fingering that is neither a substitution nor an alternative. */
  Optional<Leaf> fingering() {
    return fingering;
  }

  /** The first string number. */
  Optional<Leaf> string() {
    return string;
  }

  /** The open-string sign. */
  Optional<XmlElement> openString() {
    return openString;
  }

  /** The thumb sign. */
  Optional<XmlElement> thumb() {
    return thumb;
  }
}
