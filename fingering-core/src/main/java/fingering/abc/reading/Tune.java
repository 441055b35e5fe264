package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.TuneFault;

/**
 * A tune.
 *
 * @param voices its voices, at least one
 * @param remarks assumptions, omissions and repairs, one sentence each, without full stop
 * @param general those of the remarks that are about no place in the text
 * @param faults repairs, and measures that do not fill their meter, each with its place
 */
public record Tune(
    ImmutableList<Voice> voices,
    ImmutableList<String> remarks,
    ImmutableList<String> general,
    ImmutableList<TuneFault> faults) {

  /**
   * A voice.
   *
   * @param header its header
   * @param measures its measures, at least one
   */
  public record Voice(TuneHeader header, ImmutableList<TuneMeasure> measures) {}
}
