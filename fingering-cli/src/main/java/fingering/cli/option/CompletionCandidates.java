package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import fingering.scoring.Weights;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Iterator;

/** Values that a shell completes where an option takes no constants. */
public final class CompletionCandidates {
  private CompletionCandidates() {}

  /** The presets, which are the levels of players too. */
  static final class Presets implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Weights.presets().iterator();
    }
  }

  /** The instruments. */
  public static final class OfInstruments implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Instruments.standard().all().stream().map(Instrument::id).iterator();
    }
  }

  /** How plans of 'compare' are called. */
  static final class Plans implements Iterable<String> {
    private static final ImmutableList<String> NAMES =
        ImmutableList.of("first", "third", "second", "free");

    @Override
    public Iterator<String> iterator() {
      return NAMES.iterator();
    }
  }
}
