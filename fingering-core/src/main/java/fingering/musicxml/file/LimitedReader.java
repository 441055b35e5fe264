package fingering.musicxml.file;

import com.google.common.collect.ImmutableSet;
import fingering.musicxml.UnreadableScoreException;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Reads the XML of a score, and stops as soon as it exceeds the limits. Skips elements and
 * attributes that the program does not use, to save the XML binding from building objects for them.
 */
public final class LimitedReader extends StreamReaderDelegate {

  private static final String WHAT = "The score";

  /** Layout and stems. Skipping them saves a tenth of the reading time. */
  private static final ImmutableSet<String> UNUSED =
      ImmutableSet.of("credit", "defaults", "identification", "print", "stem");

  /** Positions on the page. */
  private static final ImmutableSet<String> LAYOUT =
      ImmutableSet.of("default-x", "default-y", "relative-x", "relative-y", "width");

  private final ScoreLimits limits;
  private final long deepest;

  /** Indices of the current element's attributes without those of layout, in the first places. */
  private int[] kept = new int[8];

  private int keptCount;
  private long depth;
  private long parts;
  private long measures;
  private long notes;

  /**
   * Starts at the root element, where the reader must be.
   *
   * @throws UnreadableScoreException from {@link #next}, if a limit is exceeded
   */
  public LimitedReader(XMLStreamReader reader, ScoreLimits limits) {
    super(reader);
    this.limits = limits;
    deepest = limits.of(ScoreLimit.NESTING);
    depth = 1;
    keepAttributes();
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
    if (event == XMLStreamConstants.START_ELEMENT) {
      keepAttributes();
    }
    return event;
  }

  private void keepAttributes() {
    int all = super.getAttributeCount();
    if (all > kept.length) {
      kept = new int[all];
    }
    keptCount = 0;
    for (int i = 0; i < all; i++) {
      if (!LAYOUT.contains(super.getAttributeLocalName(i))) {
        kept[keptCount++] = i;
      }
    }
  }

  @Override
  public int getAttributeCount() {
    return keptCount;
  }

  @Override
  public QName getAttributeName(int index) {
    return super.getAttributeName(kept[index]);
  }

  @Override
  public String getAttributeNamespace(int index) {
    return super.getAttributeNamespace(kept[index]);
  }

  @Override
  public String getAttributePrefix(int index) {
    return super.getAttributePrefix(kept[index]);
  }

  @Override
  public String getAttributeLocalName(int index) {
    return super.getAttributeLocalName(kept[index]);
  }

  @Override
  public String getAttributeType(int index) {
    return super.getAttributeType(kept[index]);
  }

  @Override
  public String getAttributeValue(int index) {
    return super.getAttributeValue(kept[index]);
  }

  @Override
  public boolean isAttributeSpecified(int index) {
    return super.isAttributeSpecified(kept[index]);
  }

  private int counted() throws XMLStreamException {
    int event = super.next();
    if (event == XMLStreamConstants.START_ELEMENT) {
      if (++depth > deepest) {
        limits.check(ScoreLimit.NESTING, depth, WHAT);
      }
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
