package fingering.page;

import fingering.music.Place;
import fingering.page.svg.Svg;

/** Places of the part in a page, where it has the music with links to it. */
final class MeasureLinks {
  private MeasureLinks() {}

  /** The id of a measure, for links. */
  static String id(int measure) {
    return "m" + measure;
  }

  /** A link to a measure of the strip. */
  static String link(int measure, String number) {
    return "<a href=\"#%s\">%s</a>".formatted(id(measure), plain(number));
  }

  private static String plain(String number) {
    return "m.&nbsp;" + Svg.escaped(number);
  }

  /** Measure and beat, the measure as a link where the page has the music. */
  static String beat(Place place, boolean linked) {
    return (linked ? link(place.measureIndex(), place.measure()) : plain(place.measure()))
        + ", beat&nbsp;"
        + place.beatText();
  }
}
