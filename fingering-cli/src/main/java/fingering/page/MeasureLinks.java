package fingering.page;

import fingering.music.Place;
import fingering.svg.Svg;

/** Names of places in the part, as links where the page contains the music. */
final class MeasureLinks {
  private MeasureLinks() {}

  /** The id of a measure, for links. */
  static String id(int measure) {
    return "m" + measure;
  }

  /** A link to a measure of the music. */
  static String link(int measure, String number) {
    return "<a href=\"#%s\">%s</a>".formatted(id(measure), plain(number));
  }

  private static String plain(String number) {
    return "m.&nbsp;" + Svg.escaped(number);
  }

  /**
   * Measure and beat.
   *
   * @param linked whether the measure is a link, because the page contains the music
   */
  static String beat(Place place, boolean linked) {
    return (linked ? link(place.measureIndex(), place.measure()) : plain(place.measure()))
        + ", beat&nbsp;"
        + place.beatText();
  }
}
