package fingering.abc.syntax;

/**
 * A decoration: a name between exclamation marks, or a letter that stands for it (ABC 2.1,
 * decorations).
 *
 * @param name its name in ABC
 * @param kind its kind
 * @param element its element in MusicXML 4.0
 * @param attribute an attribute of the element and its value, such as {@code type=stop}; empty for
 *     none
 * @param text the text of the element, empty for none
 */
public record Decoration(String name, Kind kind, String element, String attribute, String text) {

  /** Where a decoration applies, and its group in MusicXML. */
  public enum Kind {
    /** At a note: articulation. */
    ARTICULATION,
    /** At the highest note of a chord: trills and other ornaments. */
    ORNAMENT,
    /** At a note: the bow. */
    BOWING,
    /** At its own note of a chord: the left hand. */
    LEFT_HAND,
    /** At a note or a rest. */
    NOTATION,
    /** At the staff: dynamics. */
    DYNAMICS,
    /** At the staff: hairpins. */
    WEDGE,
    /** At the staff: words or a sign. */
    DIRECTION,
    /** Left out, because MusicXML cannot express it. */
    LEFT_OUT
  }

  /** Returns whether it belongs to the staff, not to a note. */
  public boolean atStaff() {
    return switch (kind) {
      case DYNAMICS, WEDGE, DIRECTION -> true;
      case ARTICULATION, ORNAMENT, BOWING, LEFT_HAND, NOTATION, LEFT_OUT -> false;
    };
  }

  /** Returns whether it is allowed at a rest. */
  public boolean fitsRest() {
    return kind == Kind.NOTATION || kind == Kind.LEFT_OUT || element.equals("breath-mark");
  }

  /** Returns whether it is an ornament with an upper note. */
  public boolean goesUp() {
    return kind == Kind.ORNAMENT && !element.equals("mordent") && !attribute.equals("type=stop");
  }
}
