package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import fingering.scoring.Weights;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Iterator;

/** The values that a shell completes after options whose type is not an enum. */
public final class CompletionCandidates {
  private CompletionCandidates() {}

  /** The presets, which are also the levels of players. */
  static final class OfPresets implements Iterable<String> {
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

  /** The names of the plans of 'compare'. */
  static final class OfPlans implements Iterable<String> {
    private static final ImmutableList<String> NAMES =
        ImmutableList.of("first", "third", "partly", "second", "free");

    @Override
    public Iterator<String> iterator() {
      return NAMES.iterator();
    }
  }
}
