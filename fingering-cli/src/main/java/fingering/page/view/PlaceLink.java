package fingering.page.view;

import fingering.music.Measure;
import fingering.music.Place;

/**
 * A place in the part, as a link where the page contains the music.
 *
 * @param id the id of the measure on the page
 * @param measure the number of the measure, as printed
 * @param beat the beat; empty for the whole measure
 * @param linked whether the page contains the music
 */
public record PlaceLink(String id, String measure, String beat, boolean linked) {

  /** The id of a measure, for links. */
  public static String id(int measure) {
    return "m" + measure;
  }

  /** A link to a measure. */
  public static PlaceLink to(Measure measure) {
    return new PlaceLink(id(measure.index()), measure.number(), "", true);
  }

  /** A link to the measure of a place. */
  public static PlaceLink measure(Place place) {
    return new PlaceLink(id(place.measureIndex()), place.measure(), "", true);
  }

  /** Measure and beat. */
  public static PlaceLink beat(Place place, boolean linked) {
    return new PlaceLink(id(place.measureIndex()), place.measure(), place.beatText(), linked);
  }
}
