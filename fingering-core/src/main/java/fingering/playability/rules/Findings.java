package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Place;
import fingering.musicxml.reading.PartInfo;
import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.PartMusic;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Gathers the findings of a part. Spots of one kind that follow closely become one finding, told by
 * its hardest spot; only what is told is put into words.
 */
public final class Findings {
  private final PartInfo part;
  private final List<Finding> all = new ArrayList<>();
  private final Map<FindingKind, Run> runs = new EnumMap<>(FindingKind.class);

  /**
   * By index of measure, whether a movement begins there: nothing runs over from the one before.
   */
  private final BitSet begins;

  private Findings(PartInfo part, BitSet begins) {
    this.part = part;
    this.begins = begins;
  }

  /** With nothing found yet in a part. */
  public static Findings of(PartMusic music) {
    BitSet begins = new BitSet();
    music.movements().stream().forEach(m -> begins.set(music.moment(m).place().measureIndex()));
    return new Findings(music.info(), begins);
  }

  /**
   * What is told of a spot.
   *
   * @param reason what is wrong, without a full stop
   * @param wayOut what to write instead, a sentence; empty for nothing
   */
  record Words(String reason, String wayOut) {}

  /** How spots of a kind are taken together. */
  enum Together {
    /** Each for itself. */
    NEVER(-1),
    /** Those of one measure. */
    IN_A_MEASURE(0),
    /** Those of neighbouring measures. */
    IN_A_PASSAGE(1),
    /** Those with no more than some lines of music between them. */
    IN_A_SECTION(8);

    private final int measures;

    Together(int measures) {
      this.measures = measures;
    }
  }

  /** A spot: the heavier, the harder among those of its severity. */
  record Spot(Severity severity, double weight, ImmutableList<Note> notes, Supplier<Words> words) {
    boolean harderThan(Spot other) {
      return severity != other.severity ? severity.atLeast(other.severity) : weight > other.weight;
    }
  }

  private static final class Run {
    private final Place from;
    private Place to;
    private Spot hardest;
    private int spots = 1;

    Run(Place place, Spot spot) {
      from = place;
      to = place;
      hardest = spot;
    }
  }

  /** Adds a spot at a moment, about the notes that begin there. */
  void add(
      FindingKind kind,
      Together together,
      Severity severity,
      double weight,
      Moment at,
      Supplier<Words> words) {
    add(kind, together, at.place(), new Spot(severity, weight, at.starting(), words));
  }

  /** Adds a spot at a place. Spots of a kind are added in the order of time. */
  void add(FindingKind kind, Together together, Place place, Spot spot) {
    Run run = runs.get(kind);
    if (run != null && follows(run.to, place, together)) {
      run.to = place;
      run.spots++;
      if (spot.harderThan(run.hardest)) {
        run.hardest = spot;
      }
      return;
    }
    if (run != null) {
      end(kind, run);
    }
    runs.put(kind, new Run(place, spot));
  }

  private boolean follows(Place before, Place now, Together together) {
    int next = begins.nextSetBit(before.measureIndex() + 1);
    return now.measureIndex() - before.measureIndex() <= together.measures
        && (next < 0 || next > now.measureIndex());
  }

  /** Ends what runs: what is added next is told for itself. */
  void endRuns() {
    runs.forEach(this::end);
    runs.clear();
  }

  private void end(FindingKind kind, Run run) {
    Words words = run.hardest.words.get();
    String others =
        run.spots == 1
            ? "."
            : run.spots == 2
                ? ", and there is one place more like it."
                : ", and there are " + (run.spots - 1) + " places more like it.";
    all.add(
        new Finding(
            kind,
            run.hardest.severity,
            part,
            run.from,
            run.to,
            run.hardest.notes,
            words.reason + others,
            words.wayOut.isEmpty() ? Optional.empty() : Optional.of(words.wayOut)));
  }

  /** All of them, in the order of the part. */
  public ImmutableList<Finding> inOrder() {
    endRuns();
    return ImmutableList.sortedCopyOf(Finding.IN_THE_PART, all);
  }
}
