package fingering.musicxml;

import com.google.common.collect.ImmutableSet;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Reads the XML of a score and stops as soon as there is more of it than the limits allow. Elements
 * of which nothing here makes use are read past, so that the binding makes nothing of them.
 */
final class CountedReader extends StreamReaderDelegate {

  private static final String WHAT = "The score";

  /** Layout and stems: a tenth of the time of reading. */
  private static final ImmutableSet<String> UNUSED =
      ImmutableSet.of("credit", "defaults", "identification", "print", "stem");

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
    int event = counted();
    while (event == XMLStreamConstants.START_ELEMENT && UNUSED.contains(getLocalName())) {
      long outside = depth - 1;
      while (depth > outside) {
        counted();
      }
      event = counted();
    }
    return event;
  }

  private int counted() throws XMLStreamException {
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
