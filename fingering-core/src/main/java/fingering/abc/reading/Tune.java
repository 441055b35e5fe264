package fingering.abc.reading;

import com.google.common.collect.ImmutableList;

/**
 * A tune.
 *
 * @param voices its voices, at least one
 * @param remarks assumptions, omissions and repairs, one sentence each, without full stop
 */
public record Tune(ImmutableList<Voice> voices, ImmutableList<String> remarks) {

  /**
   * A voice.
   *
   * @param header its header
   * @param measures its measures, at least one
   */
  public record Voice(TuneHeader header, ImmutableList<TuneMeasure> measures) {}
}
