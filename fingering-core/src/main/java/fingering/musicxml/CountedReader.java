package fingering.musicxml;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/** Reads the XML of a score and stops as soon as there is more of it than the limits allow. */
final class CountedReader extends StreamReaderDelegate {

  private static final String WHAT = "The score";

  private final ScoreLimits limits;
  private long depth;
  private long parts;
  private long measures;
  private long notes;

  /**
   * Counts from where the reader stands, its root element.
   *
   * @throws UnreadableScoreException from {@link #next}, if a limit is passed
   */
  CountedReader(XMLStreamReader reader, ScoreLimits limits) {
    super(reader);
    this.limits = limits;
    depth = 1;
  }

  @Override
  public int next() throws XMLStreamException {
    int event = super.next();
    if (event == XMLStreamConstants.START_ELEMENT) {
      depth++;
      limits.check(ScoreLimit.NESTING, depth, WHAT);
      switch (getLocalName()) {
        case "part" -> limits.check(ScoreLimit.PARTS, ++parts, WHAT);
        case "measure" -> limits.check(ScoreLimit.MEASURES, ++measures, WHAT);
        case "note" -> limits.check(ScoreLimit.NOTES, ++notes, WHAT);
        default -> {}
      }
    } else if (event == XMLStreamConstants.END_ELEMENT) {
      depth--;
    }
    return event;
  }
}
