package fingering.musicxml.xml;

/**
 * An element as it lies in the text; all places are indices into the text, in UTF-16 units.
 *
 * @param name its name, with the prefix if there is one
 * @param start the {@code <} of its start tag
 * @param contentStart just behind the start tag
 * @param contentEnd the {@code <} of its end tag; equal to {@code contentStart} if it closes itself
 * @param end just behind the element
 * @param selfClosing whether it is written {@code <name/>}
 * @param children its first and last child element
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
   * Where the child elements lie; -1 everywhere if there are none.
   *
   * @param firstStart start of the first
   * @param lastStart start of the last
   * @param lastEnd just behind the last
   */
  public record Children(int firstStart, int lastStart, int lastEnd) {
    static final Children NONE = new Children(-1, -1, -1);

    public boolean any() {
      return firstStart >= 0;
    }

    Children and(XmlElement next) {
      return new Children(any() ? firstStart : next.start(), next.start(), next.end());
    }
  }

  /**
   * An element read for its text.
   *
   * @param element the element
   * @param text its text, references resolved, stripped of white space at both ends
   * @param textStart where the first character data begins; the start of the content if none
   * @param textEnd just behind the last character data
   */
  public record Leaf(XmlElement element, String text, int textStart, int textEnd) {}
}
