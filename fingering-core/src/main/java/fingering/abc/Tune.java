package fingering.abc;

import com.google.common.collect.ImmutableList;

/**
 * A tune that has been read.
 *
 * @param header what stands above its music
 * @param measures its measures, at least one
 * @param remarks what was assumed, a sentence each
 */
record Tune(Header header, ImmutableList<TuneMeasure> measures, ImmutableList<String> remarks) {}
