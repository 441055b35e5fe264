package fingering.musicxml.marking;

import fingering.music.NoteAddress;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import fingering.musicxml.xml.XmlText;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Writes fingers, strings and words into the text of a MusicXML score. It edits the text and never
 * rewrites it: every character that belongs to no mark stays as it was, comments, quoting, entity
 * spellings and line ends included.
 */
public final class ScoreMarker {

  private final String xml;
  private final Map<NoteAddress, NoteMarks> waiting;
  private final TextEdits edits = new TextEdits();

  private ScoreMarker(String xml, Map<NoteAddress, NoteMarks> waiting) {
    this.xml = xml;
    this.waiting = waiting;
  }

  /**
   * Puts marks into a score.
   *
   * <p>A finger goes into the note's {@code <technical>} as {@code <fingering>}, the thumb as
   * {@code <thumb-position/>}, a string as {@code <string>}; words become a {@code <direction>}
   * before the note, or before the first note of its chord. A fingering or string that the note
   * already shows is left alone if it says the same, and changed in place if not; {@code
   * <open-string/>} says finger 0 and {@code <thumb-position/>} says T. Substitutions, alternative
   * fingerings and notations that are not printed are left alone.
   *
   * @param xml the text of a partwise score, without byte order mark
   * @param marks the marks, at most one for each note, in any order
   * @return the marked text
   * @throws UnreadableScoreException if the text is not a well-formed partwise score
   * @throws IllegalArgumentException if a note does not exist or is named twice
   */
  public static String mark(String xml, Collection<NoteMarks> marks) {
    Map<NoteAddress, NoteMarks> byNote = new TreeMap<>();
    for (NoteMarks each : marks) {
      if (byNote.put(each.note(), each) != null) {
        throw new IllegalArgumentException(
            "There are two sets of marks for %s.".formatted(describe(each.note())));
      }
    }
    return new ScoreMarker(xml, byNote).run();
  }

  private String run() {
    XmlCursor cursor = new XmlCursor(xml);
    requirePartwise(cursor.name());
    int[] part = {0};
    cursor.element(name -> name.equals("part") ? readPart(cursor, part[0]++) : cursor.skip());
    cursor.finishDocument();
    if (!waiting.isEmpty()) {
      throw new IllegalArgumentException(
          "The score has no note at %s.".formatted(describe(waiting.keySet().iterator().next())));
    }
    return edits.applyTo(xml);
  }

  private static void requirePartwise(String root) {
    if (root.equals("score-timewise")) {
      throw new UnreadableScoreException(
          "The score is written measure by measure (score-timewise), and only scores written part"
              + " by part can be marked: convert it to score-partwise, for instance by opening it"
              + " in a notation program and exporting it as MusicXML again.");
    }
    if (!root.equals("score-partwise")) {
      throw new UnreadableScoreException(
          "The file holds <%s> where a MusicXML score holds <score-partwise>: export the score as MusicXML from your notation program and use that file."
              .formatted(XmlText.printable(root)));
    }
  }

  private XmlElement readPart(XmlCursor cursor, int part) {
    int[] measure = {0};
    return cursor.element(
        name -> name.equals("measure") ? readMeasure(cursor, part, measure[0]++) : cursor.skip());
  }

  private XmlElement readMeasure(XmlCursor cursor, int part, int measure) {
    MeasureNotes notes = new MeasureNotes(part, measure);
    return cursor.element(name -> name.equals("note") ? notes.read(cursor) : cursor.skip());
  }

  /** Counts the notes of one measure and remembers the first note of the present chord. */
  private final class MeasureNotes {
    private final int part;
    private final int measure;
    private int count;
    private Optional<XmlElement> head = Optional.empty();

    MeasureNotes(int part, int measure) {
      this.part = part;
      this.measure = measure;
    }

    XmlElement read(XmlCursor cursor) {
      NoteShape shape = new NoteShape(cursor);
      XmlElement first = shape.chord() ? head.orElse(shape.note) : shape.note;
      head = Optional.of(first);
      NoteMarks marks = waiting.remove(new NoteAddress(part, measure, count++));
      if (marks != null) {
        new NoteMarker(xml, edits, shape).mark(marks, first);
      }
      return shape.note;
    }
  }

  private static String describe(NoteAddress note) {
    return "part %d, measure %d, note %d (counted from 0)"
        .formatted(note.part(), note.measure(), note.note());
  }
}
