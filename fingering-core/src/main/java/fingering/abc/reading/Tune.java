package fingering.abc.reading;

import com.google.common.collect.ImmutableList;

/**
 * A tune.
 *
 * @param header its header
 * @param measures its measures, at least one
 * @param remarks assumptions and omissions, one sentence each, without full stop
 */
public record Tune(
    TuneHeader header, ImmutableList<TuneMeasure> measures, ImmutableList<String> remarks) {}
