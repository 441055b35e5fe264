package fingering.abc.syntax;

/**
 * A sign between exclamation marks, or a letter in its place (ABC 2.1, decorations).
 *
 * @param name its name in ABC
 * @param kind what it stands at
 * @param element how MusicXML 4.0 names it
 * @param attribute an attribute of the element and its value, such as {@code type=stop}; empty for
 *     none
 * @param text the text of the element, empty for none
 */
public record Decoration(String name, Kind kind, String element, String attribute, String text) {

  /** What a sign stands at, and how MusicXML groups it. */
  public enum Kind {
    /** One note: how it is struck. */
    ARTICULATION,
    /** The highest note: what is played around it. */
    ORNAMENT,
    /** One note: how the bow goes. */
    BOWING,
    /** The note it is for: what the left hand does. */
    LEFT_HAND,
    /** A note or a rest. */
    NOTATION,
    /** The staff. */
    DYNAMICS,
    /** The staff. */
    WEDGE,
    /** The staff: words or a sign. */
    DIRECTION,
    /** Nothing in a score. */
    LEFT_OUT
  }

  /** Whether it stands at the staff and not at a note. */
  public boolean atStaff() {
    return switch (kind) {
      case DYNAMICS, WEDGE, DIRECTION -> true;
      case ARTICULATION, ORNAMENT, BOWING, LEFT_HAND, NOTATION, LEFT_OUT -> false;
    };
  }

  /** Whether it may stand at a rest. */
  public boolean fitsRest() {
    return kind == Kind.NOTATION || kind == Kind.LEFT_OUT || element.equals("breath-mark");
  }

  /** Whether the note that bears it goes to the note above. */
  public boolean goesUp() {
    return kind == Kind.ORNAMENT && !element.equals("mordent") && !attribute.equals("type=stop");
  }
}
