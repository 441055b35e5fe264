package fingering.musicxml.xml;

/**
 * The position of an element in the text. All positions are indices into the text, in UTF-16 units.
 *
 * @param name the name, with its prefix if there is one
 * @param start the {@code <} of the start tag
 * @param contentStart just after the start tag
 * @param contentEnd the {@code <} of the end tag; {@code contentStart} for a self-closing element
 * @param end just after the element
 * @param selfClosing whether it is written {@code <name/>}
 * @param children the first and last child element
 */
public record XmlElement(
    String name,
    int start,
    int contentStart,
    int contentEnd,
    int end,
    boolean selfClosing,
    Children children) {

  /**
   * The positions of child elements; all -1 if there are none.
   *
   * @param firstStart start of the first
   * @param lastStart start of the last
   * @param lastEnd just after the last
   */
  public record Children(int firstStart, int lastStart, int lastEnd) {
    static final Children NONE = new Children(-1, -1, -1);

    /** Returns whether there is a child. */
    public boolean any() {
      return firstStart >= 0;
    }

    Children and(XmlElement next) {
      return new Children(any() ? firstStart : next.start(), next.start(), next.end());
    }
  }

  /**
   * An element with its text.
   *
   * @param element the element
   * @param text its text with references resolved and no white space at both ends
   * @param textStart where the first character data begins; the start of the content if there are
   *     none
   * @param textEnd just after the last character data
   */
  public record Leaf(XmlElement element, String text, int textStart, int textEnd) {}
}
