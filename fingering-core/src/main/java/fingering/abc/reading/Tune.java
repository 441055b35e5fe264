package fingering.abc.reading;

import com.google.common.collect.ImmutableList;

/**
 * A tune that has been read.
 *
 * @param header what stands above its music
 * @param measures its measures, at least one
 * @param remarks what was assumed, a sentence each
 */
public record Tune(
    TuneHeader header, ImmutableList<TuneMeasure> measures, ImmutableList<String> remarks) {}
