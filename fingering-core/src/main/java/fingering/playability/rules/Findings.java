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
 * Collects the findings of a part. Nearby spots of one kind are merged into one finding, described
 * by its hardest spot; messages of the others are never built.
 */
public final class Findings {
  private final PartInfo part;
  private final List<Finding> all = new ArrayList<>();
  private final Map<FindingKind, Run> runs = new EnumMap<>(FindingKind.class);

  /** The indices of the measures that begin a movement; spots are not merged across them. */
  private final BitSet movementStarts;

  private Findings(PartInfo part, BitSet movementStarts) {
    this.part = part;
    this.movementStarts = movementStarts;
  }

  /** Creates an empty collection for a part. */
  public static Findings of(PartMusic music) {
    BitSet measures = new BitSet();
    music.movementStarts().stream()
        .forEach(m -> measures.set(music.moment(m).place().measureIndex()));
    return new Findings(music.info(), measures);
  }

  /**
   * The message of a spot.
   *
   * @param reason what is wrong, without a full stop
   * @param suggestion how to fix it, a full sentence; empty if nothing is proposed
   */
  record Message(String reason, String suggestion) {}

  /** How far apart spots of one kind may be to be merged. */
  enum Merge {
    /** Spots are never merged. */
    NEVER(-1),
    /** Spots in one measure are merged. */
    IN_A_MEASURE(0),
    /** Spots in neighbouring measures are merged. */
    IN_A_PASSAGE(1),
    /** Spots up to eight measures apart are merged. */
    IN_A_SECTION(8);

    private final int measures;

    Merge(int measures) {
      this.measures = measures;
    }
  }

  /**
   * A spot.
   *
   * @param severity its severity
   * @param weight how hard it is among spots of one kind and severity; higher is harder
   * @param notes its notes
   * @param message builds its message
   */
  record Spot(
      Severity severity, double weight, ImmutableList<Note> notes, Supplier<Message> message) {
    boolean harderThan(Spot other) {
      return severity != other.severity ? severity.atLeast(other.severity) : weight > other.weight;
    }
  }

  private static final class Run {
    private final List<Place> measures = new ArrayList<>();
    private Place to;
    private Spot hardest;
    private int spots = 1;

    Run(Place place, Spot spot) {
      measures.add(place);
      to = place;
      hardest = spot;
    }

    void add(Place place, Spot spot) {
      if (place.measureIndex() != to.measureIndex()) {
        measures.add(place);
      }
      to = place;
      spots++;
      if (spot.harderThan(hardest)) {
        hardest = spot;
      }
    }
  }

  /** Adds a spot at a moment, about the notes that begin there. */
  void add(
      FindingKind kind,
      Merge merge,
      Severity severity,
      double weight,
      Moment at,
      Supplier<Message> message) {
    add(kind, merge, at.place(), new Spot(severity, weight, at.starting(), message));
  }

  /** Adds a spot at a place. Add the spots of one kind in order of time. */
  void add(FindingKind kind, Merge merge, Place place, Spot spot) {
    Run run = runs.get(kind);
    if (run != null && mergeable(run.to, place, merge)) {
      run.add(place, spot);
      return;
    }
    if (run != null) {
      end(kind, run);
    }
    runs.put(kind, new Run(place, spot));
  }

  private boolean mergeable(Place before, Place now, Merge merge) {
    int next = movementStarts.nextSetBit(before.measureIndex() + 1);
    return now.measureIndex() - before.measureIndex() <= merge.measures
        && (next < 0 || next > now.measureIndex());
  }

  /** Ends all runs: later spots are not merged with earlier ones. */
  void endRuns() {
    runs.forEach(this::end);
    runs.clear();
  }

  private void end(FindingKind kind, Run run) {
    Message message = run.hardest.message.get();
    String others =
        run.spots == 1
            ? "."
            : run.spots == 2
                ? " (one more place like this)."
                : " (" + (run.spots - 1) + " more places like this).";
    all.add(
        new Finding(
            kind,
            run.hardest.severity,
            part,
            run.measures.get(0),
            run.to,
            ImmutableList.copyOf(run.measures),
            run.hardest.notes,
            message.reason + others,
            message.suggestion.isEmpty() ? Optional.empty() : Optional.of(message.suggestion)));
  }

  /** Returns all findings, in the order of the part. */
  public ImmutableList<Finding> inOrder() {
    endRuns();
    return ImmutableList.sortedCopyOf(Finding.BY_PLACE, all);
  }
}
