package fingering.engraving.spacing;

import fingering.engraving.glyph.Glyph;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.Chord.Layer;
import fingering.engraving.notes.Column;

/** How high rests stand. */
public final class RestPlaces {
  private RestPlaces() {}

  /**
   * The y of a rest's origin: in the middle of the staff, or away from the other voice.
   *
   * @param alone whether it stands for the rests of all voices
   */
  public static double y(Column column, Chord rest, boolean alone) {
    Glyph glyph = HeadGlyphs.rest(rest.lead());
    double middle = glyph == Glyph.REST_WHOLE ? 1 : 2;
    if (alone || rest.layer() == Layer.ALONE) {
      return middle;
    }
    boolean up = rest.layer() == Layer.UPPER;
    double y = middle + (up ? -2 : 2);
    for (Chord other : column.chords()) {
      if (other.rest() || other.layer() == rest.layer()) {
        continue;
      }
      // Keep a space free between the rest and the nearest note of the other voice.
      double top = glyph.box().top();
      double bottom = glyph.box().bottom();
      if (up) {
        y = Math.min(y, Math.floor(other.top() - 0.8 - bottom));
      } else {
        y = Math.max(y, Math.ceil(other.bottom() + 0.8 - top));
      }
    }
    return y;
  }
}
