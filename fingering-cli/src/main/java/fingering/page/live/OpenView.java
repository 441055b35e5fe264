package fingering.page.live;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * The page of an open score before its plans are made.
 *
 * @param address the address of the score on the server
 * @param revision counts its changes
 * @param parts its parts
 * @param measures the chosen measures; empty for all
 * @param tempo the chosen tempo; empty for the printed one
 * @param shapes the shapes of notation, as SVG
 * @param edit where its notes are edited; empty if they were not typed
 */
public record OpenView(
    String address,
    int revision,
    ImmutableList<PartChoice> parts,
    String measures,
    String tempo,
    Content shapes,
    String edit) {

  /**
   * A part to choose.
   *
   * @param value its number, as it is sent
   * @param name its number and name
   * @param chosen whether it is chosen
   */
  public record PartChoice(String value, String name, boolean chosen) {}
}
