package fingering.musicxml.file;

import com.google.common.collect.ImmutableSet;
import fingering.musicxml.UnreadableScoreException;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Reads the XML of a score and stops as soon as there is more of it than the limits allow. Elements
 * of which nothing here makes use are read past, so that the binding makes nothing of them.
 */
public final class LimitedReader extends StreamReaderDelegate {

  private static final String WHAT = "The score";

  /** Layout and stems: a tenth of the time of reading. */
  private static final ImmutableSet<String> UNUSED =
      ImmutableSet.of("credit", "defaults", "identification", "print", "stem");

  /** Where on the page something stands. */
  private static final ImmutableSet<String> LAYOUT =
      ImmutableSet.of("default-x", "default-y", "relative-x", "relative-y", "width");

  private final ScoreLimits limits;
  private final long deepest;

  /** Which of its attributes are told of an element, so many of them; those of layout are not. */
  private int[] told = new int[8];

  private int tells;
  private long depth;
  private long parts;
  private long measures;
  private long notes;

  /**
   * Counts from where the reader stands, its root element.
   *
   * @throws UnreadableScoreException from {@link #next}, if a limit is passed
   */
  public LimitedReader(XMLStreamReader reader, ScoreLimits limits) {
    super(reader);
    this.limits = limits;
    deepest = limits.of(ScoreLimit.NESTING);
    depth = 1;
    tell();
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
      tell();
    }
    return event;
  }

  private void tell() {
    int all = super.getAttributeCount();
    if (all > told.length) {
      told = new int[all];
    }
    tells = 0;
    for (int i = 0; i < all; i++) {
      if (!LAYOUT.contains(super.getAttributeLocalName(i))) {
        told[tells++] = i;
      }
    }
  }

  @Override
  public int getAttributeCount() {
    return tells;
  }

  @Override
  public QName getAttributeName(int index) {
    return super.getAttributeName(told[index]);
  }

  @Override
  public String getAttributeNamespace(int index) {
    return super.getAttributeNamespace(told[index]);
  }

  @Override
  public String getAttributePrefix(int index) {
    return super.getAttributePrefix(told[index]);
  }

  @Override
  public String getAttributeLocalName(int index) {
    return super.getAttributeLocalName(told[index]);
  }

  @Override
  public String getAttributeType(int index) {
    return super.getAttributeType(told[index]);
  }

  @Override
  public String getAttributeValue(int index) {
    return super.getAttributeValue(told[index]);
  }

  @Override
  public boolean isAttributeSpecified(int index) {
    return super.isAttributeSpecified(told[index]);
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
