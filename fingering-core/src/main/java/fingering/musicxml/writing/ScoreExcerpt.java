package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.writing.MeasureClock.Timed;
import fingering.musicxml.writing.MeasureClock.Timing;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One part of a score, or some of its measures, as a score of its own. The text of what stays is
 * not changed, so all signs and headings stay.
 *
 * <p>It is what a player cuts out and glues on a sheet, with what a copyist adds: the tempi and
 * rehearsal marks that are printed over the top part only; and at the beginning of an excerpt the
 * clef, key, time, transposition, tempo, dynamic and pizzicato that hold there. Slurs, hairpins and
 * octave lines end with the excerpt; ties, slides, repeat signs and endings whose other half is
 * missing are left out. Line and page breaks belong to the score, and are left out too; small
 * staves become as large as those of parts.
 */
public final class ScoreExcerpt {
  private final String xml;
  private final int part;
  private final int first;
  private final int last;
  private final Cutter cutter;
  private final SharedDirections shared;
  private final AttributesInForce attributes = new AttributesInForce();
  private final LevelInForce level = new LevelInForce();
  private final DirectionSpans lines;
  private final NoteSpans spans;
  private final List<XmlNode> header = new ArrayList<>();
  private final List<XmlElement> parts = new ArrayList<>();
  private final List<Timing> kept = new ArrayList<>();
  private final List<XmlElement> measures = new ArrayList<>();
  private String id = "";

  private ScoreExcerpt(String xml, int part, int first, int last) {
    this.xml = xml;
    this.part = part;
    this.first = first;
    this.last = last;
    cutter = new Cutter(xml);
    shared = new SharedDirections(first);
    lines = new DirectionSpans(cutter);
    spans = new NoteSpans(cutter);
  }

  /**
   * Returns a score with one part only. A score that has only this part is returned unchanged.
   *
   * @param xml the text of a partwise score, without byte order mark
   * @param part index of the part, from 0
   * @throws UnreadableScoreException if the text is not well-formed
   * @throws IllegalArgumentException if there is no such part
   */
  public static String part(String xml, int part) {
    return new ScoreExcerpt(xml, part, 0, Integer.MAX_VALUE).run();
  }

  /**
   * Returns a score with some measures of one part. Measure numbers stay as printed.
   *
   * @param xml the text of a partwise score, without byte order mark
   * @param part index of the part, from 0
   * @param first index of the first measure, from 0
   * @param last index of the last measure; measures that do not exist are ignored
   * @throws UnreadableScoreException if the text is not well-formed
   * @throws IllegalArgumentException if there is no such part or no such measure
   */
  public static String measures(String xml, int part, int first, int last) {
    if (first < 0 || last < first) {
      throw new IllegalArgumentException("measures %d to %d".formatted(first, last));
    }
    return new ScoreExcerpt(xml, part, first, last).run();
  }

  private String run() {
    XmlCursor cursor = new XmlCursor(xml);
    List<XmlElement> all = new ArrayList<>();
    cursor.element(
        name -> {
          switch (name) {
            case "part" -> {
              XmlElement read = readPart(cursor, all.size());
              all.add(read);
              return read;
            }
            case "credit", "part-list", "defaults" -> {
              XmlNode node = XmlNode.read(cursor, xml);
              header.add(node);
              return node.at();
            }
            default -> {
              return cursor.skip();
            }
          }
        });
    cursor.finishDocument();
    parts.addAll(all);
    if (part < 0 || part >= parts.size() || kept.isEmpty()) {
      throw new IllegalArgumentException(
          "The score has no measure %d in part %d (counted from 0)".formatted(first, part));
    }
    boolean alone = parts.size() == 1;
    boolean everything = first == 0 && last >= measures.size() - 1;
    if (alone && everything) {
      return xml;
    }
    cutHeader();
    for (int i = 0; i < parts.size(); i++) {
      if (i != part) {
        cutter.remove(new XmlNode(xml, parts.get(i), ImmutableList.of()));
      }
    }
    cutMeasures();
    return cutter.result();
  }

  private XmlElement readPart(XmlCursor cursor, int index) {
    boolean own = index == part;
    if (own) {
      id = cursor.attribute("id");
    }
    MeasureClock clock = new MeasureClock();
    int[] number = {0};
    return cursor.element(
        name -> {
          if (!name.equals("measure")) {
            return cursor.skip();
          }
          XmlNode node = XmlNode.read(cursor, xml);
          readMeasure(clock.read(node), number[0]++, own);
          return node.at();
        });
  }

  private void readMeasure(Timing measure, int number, boolean own) {
    boolean inside = number >= first && number <= last;
    if (number <= last) {
      measure.items().forEach(item -> shared.add(number, item, own));
    }
    if (!own) {
      return;
    }
    measures.add(measure.node().at());
    if (inside) {
      kept.add(measure);
      return;
    }
    for (Timed item : measure.items()) {
      if (number > last) {
        if (item.isNote()) {
          spans.after(item.node());
        }
        continue;
      }
      switch (item.node().name()) {
        case "attributes" -> attributes.add(item.node());
        case "note" -> spans.before(item.node());
        case "direction" -> {
          lines.before(item.node());
          level.before(item.node());
        }
        default -> {}
      }
    }
  }

  /** Credits of later pages are page numbers and the like, and the pages are others now. */
  private void cutHeader() {
    for (XmlNode node : header) {
      if (node.is("part-list") && parts.size() > 1) {
        cutPartList(node);
      } else if (isOfLaterPage(node)) {
        cutter.remove(node);
      }
    }
    if (parts.size() > 1) {
      PlayerSize.apply(header.stream().filter(node -> !isOfLaterPage(node)).toList(), cutter);
    }
  }

  private static boolean isOfLaterPage(XmlNode node) {
    String page = node.is("credit") ? node.attribute("page") : "";
    return !page.isEmpty() && !page.equals("1");
  }

  private void cutPartList(XmlNode list) {
    List<XmlNode> listed = list.all("score-part").toList();
    Optional<XmlNode> own =
        listed.stream().filter(each -> each.attribute("id").equals(id)).findFirst();
    for (XmlNode child : list.children()) {
      boolean group = child.is("part-group");
      boolean other = child.is("score-part") && own.isPresent() && !child.equals(own.get());
      if (group || other) {
        cutter.remove(child);
      }
    }
  }

  private void cutMeasures() {
    int from = first;
    int to = first + kept.size();
    if (from > 0) {
      cutter.remove(measures.get(0).start(), measures.get(from).start());
    }
    if (to < measures.size()) {
      cutter.remove(measures.get(to - 1).end(), measures.get(measures.size() - 1).end());
    }
    for (int i = 0; i < kept.size(); i++) {
      kept.get(i).node().all("print").forEach(cutter::remove);
    }
    begin(kept.get(0));
    for (int i = 0; i < kept.size(); i++) {
      Timing measure = kept.get(i);
      shared.write(first + i, measure.items(), new Places(measure));
    }
    if (from > 0 || to < measures.size()) {
      spans.cut(kept.stream().map(ScoreExcerpt::notes).toList());
      new RepeatCuts(cutter, from == 0).cut(kept, to == measures.size());
    }
  }

  private static ImmutableList<XmlNode> notes(Timing measure) {
    return measure.items().stream()
        .filter(Timed::isNote)
        .map(Timed::node)
        .collect(ImmutableList.toImmutableList());
  }

  /** Writes what holds at the start of the excerpt. */
  private void begin(Timing measure) {
    Places places = new Places(measure);
    String inForce = attributes.missing(measure.items());
    if (!inForce.isEmpty()) {
      places.top(inForce);
    }
    shared.tempoInForce().forEach(places::start);
    if (first > 0 || kept.size() < measures.size()) {
      level.missing(measure.items()).forEach(places::start);
      lines.cut(kept).forEach(places::start);
    }
    if (first > 0) {
      number(measure.node()).ifPresent(places::firstNote);
    }
  }

  /**
   * The number of the first measure as small words, {@code m. 17}. Many notation programs count the
   * measures of a file from 1, whatever their numbers are.
   */
  private static Optional<String> number(XmlNode measure) {
    String number = measure.attribute("number");
    return Optional.of(number)
        .filter(digits -> digits.matches("[0-9]{1,4}"))
        .map(
            digits ->
                "<direction placement=\"above\"><direction-type><words font-size=\"8\">m. "
                    + digits
                    + "</words></direction-type></direction>");
  }

  /** The places in a measure where new elements go. */
  private final class Places implements SharedDirections.Insertion {
    private final Timing measure;

    Places(Timing measure) {
      this.measure = measure;
    }

    /** At the start of the measure. */
    void top(String element) {
      measure.node().children().stream()
          .filter(child -> !child.is("print"))
          .findFirst()
          .ifPresentOrElse(
              child -> cutter.insertBefore(child, element),
              () -> cutter.append(measure.node(), element));
    }

    /** Before the first note, above the other words there. */
    void firstNote(String direction) {
      measure.node().first("note").ifPresent(note -> cutter.insertBefore(note, direction));
    }

    @Override
    public void start(String direction) {
      measure.node().children().stream()
          .filter(child -> !child.is("print") && !child.is("attributes") && !isLeft(child))
          .findFirst()
          .ifPresentOrElse(
              child -> cutter.insertBefore(child, direction),
              () -> cutter.append(measure.node(), direction));
    }

    private boolean isLeft(XmlNode child) {
      return child.is("barline") && child.attribute("location").equals("left");
    }

    @Override
    public void before(XmlNode child, String direction) {
      cutter.insertBefore(child, direction);
    }
  }
}
