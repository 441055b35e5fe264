package fingering.musicxml.marking;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.Ints;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import fingering.musicxml.xml.XmlElement.Leaf;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The positions in the text of a note element and of those children that marks concern. */
final class NoteElement {

  /** The note element itself. */
  final XmlElement note;

  private boolean chord;
  private String voice = "";
  private String staff = "";
  private boolean stemUp;
  private OptionalInt degree = OptionalInt.empty();
  private Optional<XmlElement> beforeNotations = Optional.empty();
  private boolean pastNotations;
  private Optional<XmlElement> notations = Optional.empty();
  private Optional<XmlElement> technical = Optional.empty();
  private Optional<Leaf> fingering = Optional.empty();
  private Optional<Leaf> string = Optional.empty();
  private Optional<XmlElement> openString = Optional.empty();
  private Optional<XmlElement> thumb = Optional.empty();
  private final List<SlurElement> slurs = new ArrayList<>();
  private final List<NotationsElement> allNotations = new ArrayList<>();

  /**
   * A slur element.
   *
   * @param type its type: start, stop or continue
   * @param number its number, from 1
   * @param notations the index of its notations among those of the note
   */
  record SlurElement(XmlElement element, String type, int number, int notations) {}

  /**
   * Notations of the note.
   *
   * @param size the number of elements in it
   */
  record NotationsElement(XmlElement element, int size) {}

  /** Reads the note whose start tag the cursor is on, to its end. */
  NoteElement(XmlCursor cursor) {
    note = cursor.element(name -> readChild(cursor, name));
  }

  private XmlElement readChild(XmlCursor cursor, String name) {
    switch (name) {
      case "chord" -> chord = true;
      case "voice" -> {
        Leaf leaf = cursor.leaf();
        voice = leaf.text();
        return remember(leaf.element());
      }
      case "staff" -> {
        Leaf leaf = cursor.leaf();
        staff = leaf.text();
        return remember(leaf.element());
      }
      case "pitch" -> {
        WrittenPitch pitch = new WrittenPitch();
        XmlElement read = cursor.element(child -> pitch.read(cursor, child));
        degree = pitch.degree();
        return remember(read);
      }
      case "stem" -> {
        Leaf leaf = cursor.leaf();
        stemUp = leaf.text().equals("up");
        return remember(leaf.element());
      }
      case "notations" -> {
        return remember(readNotations(cursor, !cursor.has("print-object", "no")));
      }
      case "lyric", "play", "listen" -> pastNotations = true;
      default -> {}
    }
    return remember(cursor.skip());
  }

  private XmlElement remember(XmlElement child) {
    if (!pastNotations) {
      beforeNotations = Optional.of(child);
    }
    return child;
  }

  // Notations that are not printed cannot hold visible marks, and do not show any.
  private XmlElement readNotations(XmlCursor cursor, boolean shown) {
    int[] size = {0};
    XmlElement read =
        cursor.element(
            name -> {
              size[0]++;
              return switch (name) {
                case "technical" -> shown ? readTechnical(cursor) : cursor.skip();
                case "slur" -> readSlur(cursor);
                default -> cursor.skip();
              };
            });
    allNotations.add(new NotationsElement(read, size[0]));
    if (shown) {
      notations = notations.or(() -> Optional.of(read));
    }
    return read;
  }

  private XmlElement readSlur(XmlCursor cursor) {
    String type = cursor.attribute("type");
    Integer number = Ints.tryParse(cursor.attribute("number").strip());
    XmlElement read = cursor.skip();
    slurs.add(new SlurElement(read, type, number == null ? 1 : number, allNotations.size()));
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

  /** Returns its slurs, in the order of the file. */
  ImmutableList<SlurElement> slurs() {
    return ImmutableList.copyOf(slurs);
  }

  /** Returns all its notations, printed or not. */
  ImmutableList<NotationsElement> allNotations() {
    return ImmutableList.copyOf(allNotations);
  }

  /** Returns whether it is in a chord with the previous note. */
  boolean chord() {
    return chord;
  }

  /** Returns its voice, "" if it has none. */
  String voice() {
    return voice;
  }

  /** Returns whether its stem goes up. */
  boolean stemUp() {
    return stemUp;
  }

  /** Returns its {@linkplain WrittenPitch#degree degree}; empty for a rest. */
  OptionalInt degree() {
    return degree;
  }

  /** Returns its staff, "" if it has none. */
  String staff() {
    return staff;
  }

  /** Returns the last child that must come before new notations. */
  Optional<XmlElement> beforeNotations() {
    return beforeNotations;
  }

  /** Returns the first notations element that is printed. */
  Optional<XmlElement> notations() {
    return notations;
  }

  /** Returns the first technical element in printed notations. */
  Optional<XmlElement> technical() {
    return technical;
  }

  /** Returns the first fingering that is neither a substitution nor an alternative. */
  Optional<Leaf> fingering() {
    return fingering;
  }

  /** Returns the first string number. */
  Optional<Leaf> string() {
    return string;
  }

  /** Returns the open-string sign. */
  Optional<XmlElement> openString() {
    return openString;
  }

  /** Returns the thumb sign. */
  Optional<XmlElement> thumb() {
    return thumb;
  }
}
