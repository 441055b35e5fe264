package fingering.page.live;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * The page of an open lesson before its plans are made.
 *
 * @param address the address of the lesson on the server
 * @param revision counts its changes
 * @param parts its parts
 * @param instruments the instruments
 * @param students the students
 * @param measures the chosen measures; empty for all
 * @param tempo the chosen tempo; empty for the printed one
 * @param positions the positions to choose for measures
 * @param strings the strings to choose for measures
 * @param shapes the shapes of notation, as SVG
 * @param edit where its notes are edited; empty if they were not typed
 */
public record OpenView(
    String address,
    int revision,
    ImmutableList<Option> parts,
    ImmutableList<Option> instruments,
    ImmutableList<Option> students,
    String measures,
    String tempo,
    ImmutableList<Option> positions,
    ImmutableList<Option> strings,
    Content shapes,
    String edit) {

  /** The id of the lesson. */
  public String id() {
    return address.substring(address.lastIndexOf('/') + 1);
  }

  /**
   * Something to choose from a menu.
   *
   * @param value what is sent
   * @param name its name
   * @param chosen whether it is chosen
   */
  public record Option(String value, String name, boolean chosen) {}
}
