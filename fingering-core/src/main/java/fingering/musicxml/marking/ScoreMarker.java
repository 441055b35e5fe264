package fingering.musicxml.marking;

import fingering.music.ChangedSlurs;
import fingering.music.NoteAddress;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.xml.TextEdits;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import fingering.musicxml.xml.XmlText;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Writes fingers, strings and words into the text of a MusicXML score. It only edits the text:
 * every character outside the marks stays unchanged, including comments, quotes, entity references
 * and line ends.
 */
public final class ScoreMarker {

  private final String xml;
  private final Map<NoteAddress, NoteMarks> pending;
  private final TextEdits edits = new TextEdits();

  private ScoreMarker(String xml, Map<NoteAddress, NoteMarks> pending) {
    this.xml = xml;
    this.pending = pending;
  }

  /**
   * Writes marks into a score.
   *
   * <p>A finger goes into the note's {@code <technical>} as {@code <fingering>}, the thumb as
   * {@code <thumb-position/>}, a string as {@code <string>}. Words and Roman numerals for strings
   * become a {@code <direction>} above the staff, before the note or the first note of its chord,
   * with the voice and staff of the note, and higher than its finger. A different fingering or
   * string that the note already shows is changed in place; {@code <open-string/>} means finger 0
   * and {@code <thumb-position/>} means T. Substitutions, alternative fingerings and notations that
   * are not printed stay unchanged.
   *
   * @param xml the text of a partwise score, without byte order mark: {@link
   *     fingering.musicxml.file.ScoreFile#text} of the file from which the addresses in the marks
   *     were read. Marks for another score would be written at other notes.
   * @param marks the marks in any order, at most one for each note
   * @return the marked text
   * @throws UnreadableScoreException if the text is not a well-formed partwise score
   * @throws IllegalArgumentException if a note does not exist, or has two sets of marks
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

  /**
   * Writes marks and changed slurs into a score. A slur goes together with its {@code <notations>}
   * if they hold nothing else; a new one is added to the notations of its notes.
   *
   * @param xml as above
   * @param marks as above
   * @param slurs the changed slurs, from the same file
   * @return the marked text
   * @throws UnreadableScoreException as above
   * @throws IllegalArgumentException as above
   */
  public static String mark(String xml, Collection<NoteMarks> marks, ChangedSlurs slurs) {
    return mark(SlurMarker.mark(xml, slurs), marks);
  }

  private String run() {
    XmlCursor cursor = new XmlCursor(xml);
    requirePartwise(cursor.name());
    int[] part = {0};
    cursor.element(name -> name.equals("part") ? readPart(cursor, part[0]++) : cursor.skip());
    cursor.finishDocument();
    if (!pending.isEmpty()) {
      throw new IllegalArgumentException(
          "The score has no note at %s.".formatted(describe(pending.keySet().iterator().next())));
    }
    return edits.applyTo(xml);
  }

  static void requirePartwise(String root) {
    if (root.equals("score-timewise")) {
      throw new UnreadableScoreException(
          "The score is written measure by measure (score-timewise), and only scores written part"
              + " by part can be marked: convert it to score-partwise, for instance by opening it"
              + " in a notation program and exporting it as MusicXML again.");
    }
    if (!root.equals("score-partwise")) {
      throw new UnreadableScoreException(
          "The file is not a MusicXML score but contains <%s>: export the score as MusicXML from your notation program and use that file."
              .formatted(XmlText.printable(root)));
    }
  }

  private XmlElement readPart(XmlCursor cursor, int part) {
    int[] measure = {0};
    StaffHeights heights = new StaffHeights();
    return cursor.element(
        name ->
            name.equals("measure")
                ? readMeasure(cursor, part, measure[0]++, heights)
                : cursor.skip());
  }

  private XmlElement readMeasure(XmlCursor cursor, int part, int measure, StaffHeights heights) {
    MeasureNotes notes = new MeasureNotes(part, measure);
    XmlElement read =
        cursor.element(
            name ->
                switch (name) {
                  case "note" -> notes.read(cursor);
                  case "attributes" -> heights.read(cursor);
                  default -> cursor.skip();
                });
    notes.mark(heights);
    return read;
  }

  /** The notes of a measure, each with the first note of its chord. */
  private final class MeasureNotes {
    private final int part;
    private final int measure;
    private final List<NoteElement> notes = new ArrayList<>();
    private final List<XmlElement> heads = new ArrayList<>();
    private Optional<XmlElement> head = Optional.empty();

    MeasureNotes(int part, int measure) {
      this.part = part;
      this.measure = measure;
    }

    XmlElement read(XmlCursor cursor) {
      NoteElement element = new NoteElement(cursor);
      XmlElement first = element.chord() ? head.orElse(element.note) : element.note;
      head = Optional.of(first);
      notes.add(element);
      heads.add(first);
      return element.note;
    }

    /** The index of the first note of the chord of a note. */
    private int head(int note) {
      int head = note;
      while (head > 0 && notes.get(head).chord()) {
        head--;
      }
      return head;
    }

    void mark(StaffHeights heights) {
      for (int i = 0; i < notes.size(); i++) {
        NoteMarks marks = pending.remove(new NoteAddress(part, measure, i));
        if (marks != null) {
          int height = heights.above(notes.subList(head(i), notes.size()));
          new NoteMarker(xml, edits, notes.get(i)).mark(marks, heads.get(i), height);
        }
      }
    }
  }

  private static String describe(NoteAddress note) {
    return "part %d, measure %d, note %d (counted from 0)"
        .formatted(note.part(), note.measure(), note.note());
  }
}
