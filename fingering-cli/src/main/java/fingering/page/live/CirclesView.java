package fingering.page.live;

import com.google.common.collect.ImmutableList;
import fingering.page.view.PlaceLink;

/**
 * What to circle in the part.
 *
 * @param address the address of the lesson on the server
 * @param shown whether the music shows the rings
 * @param groups the things by kind
 */
public record CirclesView(String address, boolean shown, ImmutableList<Group> groups) {

  /**
   * Things of one kind.
   *
   * @param name what is sent
   * @param heading the kind
   * @param number how many of them are circled
   * @param things the things
   */
  public record Group(String name, String heading, int number, ImmutableList<Thing> things) {}

  /**
   * A thing.
   *
   * @param name what is sent
   * @param place where it is
   * @param text what it is, and what to do about it
   * @param circled whether it is circled
   */
  public record Thing(String name, PlaceLink place, String text, boolean circled) {}
}
