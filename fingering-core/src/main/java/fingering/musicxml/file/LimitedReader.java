package fingering.musicxml.file;

import com.google.common.collect.ImmutableSet;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.xml.XmlText;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Reads the XML of a score, and stops as soon as it exceeds the limits. Skips elements and
 * attributes that the program does not use, to save the XML binding from building objects for them,
 * and attributes with text instead of a number.
 */
public final class LimitedReader extends StreamReaderDelegate {

  private static final String WHAT = "The score";

  /** Layout of pages and systems. Skipping it saves reading time. */
  private static final ImmutableSet<String> UNUSED =
      ImmutableSet.of("credit", "defaults", "identification", "print");

  /** Positions on the page. */
  private static final ImmutableSet<String> LAYOUT =
      ImmutableSet.of("default-x", "default-y", "relative-x", "relative-y", "width");

  /** Attributes with whole numbers. The XML binding stops at any other text in them. */
  private static final ImmutableSet<String> NUMBERS =
      ImmutableSet.of(
          "blank-page",
          "bottom-staff",
          "latency",
          "line",
          "line-through",
          "number",
          "overline",
          "page",
          "port",
          "position",
          "slashes",
          "staff",
          "string",
          "times",
          "top-staff",
          "underline");

  /** Attributes with decimal numbers, which need the same care. */
  private static final ImmutableSet<String> DECIMALS =
      ImmutableSet.of(
          "attack",
          "beats",
          "bezier-offset",
          "bezier-offset2",
          "bezier-x",
          "bezier-x2",
          "bezier-y",
          "bezier-y2",
          "dash-length",
          "divisions",
          "dynamics",
          "elevation",
          "end-dynamics",
          "end-length",
          "first-beat",
          "height",
          "last-beat",
          "make-time",
          "offset",
          "pan",
          "release",
          "rotation",
          "scaling",
          "second-beat",
          "space-length",
          "spread",
          "staff-spacing",
          "steal-time-following",
          "steal-time-previous",
          "tempo",
          "text-x",
          "text-y");

  /** Elements that are numbered with any text. */
  private static final ImmutableSet<String> FREELY_NUMBERED =
      ImmutableSet.of("ending", "lyric", "measure");

  private static final Pattern WHOLE = Pattern.compile("\\s*[-+]?\\d{1,9}\\s*");
  private static final Pattern DECIMAL =
      Pattern.compile("\\s*[-+]?(\\d{1,40}\\.?|\\d{0,40}\\.\\d{1,40})\\s*");

  /** The most entities to name. */
  private static final int MOST_ENTITIES = 3;

  private final ScoreLimits limits;
  private final long deepest;
  private final Set<String> entities = new LinkedHashSet<>();

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
      String name = super.getAttributeLocalName(i);
      if (!LAYOUT.contains(name) && fits(name, i)) {
        kept[keptCount++] = i;
      }
    }
  }

  /** Whether an attribute that should be a number is one; true for other attributes. */
  private boolean fits(String name, int index) {
    boolean whole =
        name.equals("size")
            ? getLocalName().equals("octave-shift")
            : NUMBERS.contains(name) && !FREELY_NUMBERED.contains(getLocalName());
    if (whole) {
      return WHOLE.matcher(super.getAttributeValue(index)).matches();
    }
    return !DECIMALS.contains(name) || DECIMAL.matcher(super.getAttributeValue(index)).matches();
  }

  /**
   * Returns a remark on entities, which are not read; without full stop, empty if there are none.
   */
  public Optional<String> remark() {
    return entities.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "the score abbreviates text by entities, which are not read (%s): replace them by their text in the file"
                .formatted(
                    entities.stream()
                        .limit(MOST_ENTITIES)
                        .map(name -> "&" + XmlText.printable(name) + ";")
                        .collect(Collectors.joining(", "))));
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
    if (event == XMLStreamConstants.ENTITY_REFERENCE && entities.size() < MOST_ENTITIES) {
      entities.add(getLocalName());
    }
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
