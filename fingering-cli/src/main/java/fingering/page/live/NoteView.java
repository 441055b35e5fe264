package fingering.page.live;

import com.google.common.collect.ImmutableList;

/**
 * A chosen note, and the ways to play it.
 *
 * @param address the address of the lesson on the server
 * @param moment the index of its moment in the passage
 * @param place the measure and beat, and the notes
 * @param locked whether its fingering is fixed
 * @param reason why it cannot be fixed; empty if it can
 * @param slur what can be done with its bowing
 * @param ways the ways to play it, best first
 */
public record NoteView(
    String address,
    int moment,
    String place,
    boolean locked,
    String reason,
    SlurView slur,
    ImmutableList<Way> ways) {

  /**
   * A way to play the notes of a moment.
   *
   * @param fix what is sent to choose it: the fingering of each note, {@code II/4@3;III/1@3}
   * @param fingering the fingering in words
   * @param price what it costs more, in words
   * @param rest what else changes, in words
   * @param points the points that the whole plan costs more
   * @param chosen whether the plan plays it so
   */
  public record Way(
      String fix, String fingering, String price, String rest, String points, boolean chosen) {}

  /** The fingering that the plan has now, as it is sent. */
  public String chosenWay() {
    return ways.stream().filter(Way::chosen).map(Way::fix).findFirst().orElse("");
  }
}
