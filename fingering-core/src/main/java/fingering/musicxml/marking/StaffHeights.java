package fingering.musicxml.marking;

import com.google.common.primitives.Ints;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import fingering.musicxml.xml.XmlElement.Leaf;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The height of words above the staff of a part, in tenths of a staff space from the top line. An
 * engraver puts the finger at the note or its stem, and words above the finger, clear of the next
 * notes too.
 */
final class StaffHeights {
  /** Half a staff space, from one step to the next. */
  private static final int STEP = 5;

  /** A stem is three and a half spaces long (common practice, no source). */
  private static final int STEM = 35;

  /** The space for one finger. */
  private static final int FINGER = 15;

  /** The distance from the highest note, without a finger, to words. */
  private static final int GAP = 15;

  /** The distance from one line of words to the next. */
  static final int LINE = 20;

  /** The number of notes that a word is as wide as. */
  private static final int WIDE = 3;

  private static final int LINES = 5;

  /** The degree of the note on the top line, by staff. */
  private final Map<String, Integer> topLines = new HashMap<>();

  /** Reads the attributes that the cursor is on. */
  XmlElement read(XmlCursor cursor) {
    return cursor.element(name -> name.equals("clef") ? readClef(cursor) : cursor.skip());
  }

  private XmlElement readClef(XmlCursor cursor) {
    String staff = cursor.attribute("number");
    String[] values = {"", "", ""};
    XmlElement read =
        cursor.element(
            name -> {
              int which = List.of("sign", "line", "clef-octave-change").indexOf(name);
              if (which < 0) {
                return cursor.skip();
              }
              Leaf leaf = cursor.leaf();
              values[which] = leaf.text();
              return leaf.element();
            });
    int octaves = number(values[2]).filter(change -> Math.abs(change) <= 2).orElse(0);
    int sign =
        switch (values[0]) {
          case "G" -> WrittenPitch.degree(4, 4 + octaves);
          case "F" -> WrittenPitch.degree(3, 3 + octaves);
          default -> WrittenPitch.degree(0, 4 + octaves);
        };
    int usual = values[0].equals("G") ? 2 : values[0].equals("F") ? 4 : 3;
    int line = number(values[1]).filter(one -> one >= 1 && one <= LINES).orElse(usual);
    topLines.put(staff.isEmpty() ? "1" : staff, sign + 2 * (LINES - line));
    return read;
  }

  private static Optional<Integer> number(String text) {
    return Optional.ofNullable(Ints.tryParse(text));
  }

  /**
   * The lowest line of words above a note.
   *
   * @param notes the notes of the measure from this one on, in the order of the file
   */
  int above(List<NoteElement> notes) {
    String staff = notes.get(0).staff();
    int highest = 0;
    int chord = 0;
    int heads = 0;
    for (NoteElement note : notes) {
      if (!note.staff().equals(staff)) {
        continue;
      }
      heads += note.chord() ? 0 : 1;
      if (heads > WIDE) {
        break;
      }
      chord = note.chord() ? chord + 1 : 0;
      highest = Math.max(highest, top(note) + chord * FINGER);
    }
    return highest + FINGER + GAP;
  }

  private int top(NoteElement note) {
    Optional<Integer> line =
        Optional.ofNullable(topLines.get(note.staff().isEmpty() ? "1" : note.staff()));
    if (line.isEmpty() || note.degree().isEmpty()) {
      return 0;
    }
    int head = STEP * (note.degree().getAsInt() - line.get());
    return head + (note.stemUp() ? STEM : STEP);
  }
}
