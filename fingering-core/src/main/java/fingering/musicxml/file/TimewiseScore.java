package fingering.musicxml.file;

import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Converts a score ordered by measures, each with all parts (score-timewise), to the usual order by
 * parts, each with all measures (score-partwise). The music of a part in a measure is moved
 * unchanged, character for character.
 */
final class TimewiseScore {

  /** The remark on a score that was converted. */
  static final String REMARK =
      "the score is ordered by measures (score-timewise); it is read, and a marked copy is written, ordered by parts";

  private static final String TIMEWISE = "score-timewise";
  private static final String PARTWISE = "score-partwise";

  // An id must be unique, but each measure is written once for every part.
  private static final Pattern ID = Pattern.compile("\\sid\\s*=\\s*(\"[^\"]*\"|'[^']*')");

  private final String xml;
  private final ScoreLimits limits;
  private final List<XmlElement> measures = new ArrayList<>();

  /** The music of each part by its id, measure by measure. */
  private final Map<String, List<Piece>> parts = new LinkedHashMap<>();

  private record Piece(int measure, XmlElement element) {}

  private TimewiseScore(String xml, ScoreLimits limits) {
    this.xml = xml;
    this.limits = limits;
  }

  /** Returns whether the text is a score ordered by measures; false if it is not XML. */
  static boolean is(String xml) {
    try {
      return new XmlCursor(xml).name().equals(TIMEWISE);
    } catch (UnreadableScoreException e) {
      return false;
    }
  }

  /**
   * Returns the same score ordered by parts. Parts come in the order in which they first appear;
   * where a measure lacks a part, the part gets an empty measure. Anything between the parts of a
   * measure is left out; the schema allows only comments there.
   *
   * @param xml the text of a timewise score, without byte order mark
   * @throws UnreadableScoreException if the text is not well-formed XML, or has more parts or
   *     measures than the limits allow
   */
  static String partwise(String xml, ScoreLimits limits) {
    return new TimewiseScore(xml, limits).convert();
  }

  private String convert() {
    XmlCursor cursor = new XmlCursor(xml);
    XmlElement root =
        cursor.element(name -> name.equals("measure") ? measure(cursor) : cursor.skip());
    cursor.finishDocument();
    limits.check(ScoreLimit.PARTS, parts.size(), "The score");
    limits.check(ScoreLimit.MEASURES, (long) parts.size() * measures.size(), "The score");
    StringBuilder out = new StringBuilder(xml.length());
    out.append(renamed(xml.substring(0, root.contentStart())));
    if (root.selfClosing()) {
      return out.append(xml, root.end(), xml.length()).toString();
    }
    int head = measures.isEmpty() ? root.contentEnd() : measures.get(0).start();
    out.append(xml, root.contentStart(), head);
    parts.values().forEach(pieces -> write(pieces, out));
    return out.append(renamed(xml.substring(root.contentEnd()))).toString();
  }

  /** Replaces the kind of score in a tag and in the document type before it. */
  private static String renamed(String text) {
    return text.replace(TIMEWISE, PARTWISE)
        .replace("Timewise", "Partwise")
        .replace("timewise.dtd", "partwise.dtd");
  }

  private XmlElement measure(XmlCursor cursor) {
    int index = measures.size();
    XmlElement measure =
        cursor.element(name -> name.equals("part") ? part(cursor, index) : cursor.skip());
    measures.add(measure);
    return measure;
  }

  private XmlElement part(XmlCursor cursor, int measure) {
    List<Piece> pieces = parts.computeIfAbsent(cursor.attribute("id"), id -> new ArrayList<>());
    XmlElement part = cursor.skip();
    pieces.add(new Piece(measure, part));
    return part;
  }

  private void write(List<Piece> pieces, StringBuilder out) {
    out.append(startTag(pieces.get(0).element())).append('\n');
    int next = 0;
    for (int i = 0; i < measures.size(); i++) {
      String tag = startTag(measures.get(i));
      out.append(ID.matcher(tag).replaceAll(""));
      for (; next < pieces.size() && pieces.get(next).measure() == i; next++) {
        XmlElement piece = pieces.get(next).element();
        out.append(xml, piece.contentStart(), piece.contentEnd());
      }
      out.append("</measure>\n");
    }
    out.append("</part>\n");
  }

  /** The start tag of an element; of a self-closing element too. */
  private String startTag(XmlElement element) {
    int end = element.contentStart() - (element.selfClosing() ? "/>".length() : 1);
    return xml.substring(element.start(), end) + ">";
  }
}
