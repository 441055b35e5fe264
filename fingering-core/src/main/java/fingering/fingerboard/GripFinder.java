package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Note;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * Every grip with which the hand can take a moment of music. Moments that ask for the same get one
 * and the same list. Safe for use by many threads.
 */
public final class GripFinder {
  private final Fingerboard fingerboard;
  private final Map<PitchRequest, ImmutableList<Placement>> placements = new ConcurrentHashMap<>();
  private final Map<PitchRequest, ImmutableList<Placement>> widePlacements =
      new ConcurrentHashMap<>();
  private final Map<PitchRequest, ImmutableList<Grip>> alone = new ConcurrentHashMap<>();
  private final Map<Together, ImmutableList<Grip>> together = new ConcurrentHashMap<>();

  private final Map<List<PitchRequest>, ImmutableList<Grip>> divided = new ConcurrentHashMap<>();

  /** Notes that one hand holds; plucked ones need not lie on neighbouring strings. */
  private record Together(List<PitchRequest> notes, boolean anyStrings) {}

  /** A finder for one fingerboard; it remembers what it has found. */
  public GripFinder(Fingerboard fingerboard) {
    this.fingerboard = fingerboard;
  }

  /**
   * The grips of a moment, a placement for each of its {@link Moment#sounding() sounding} notes; of
   * the struck notes alone, with the held ones let go, where nothing else can be held; and where no
   * hand can take even those together, {@link Grip#divided() divided} ones. Empty only where a note
   * lies out of range.
   */
  public ImmutableList<Grip> grips(Moment moment) {
    if (moment.held().isEmpty() && moment.starting().size() == 1) {
      return alone.computeIfAbsent(
          PitchRequest.of(moment.starting().get(0)), note -> compute(List.of(note), false));
    }
    ImmutableList<Grip> all = grips(soundings(moment.sounding()), moment.pizzicato());
    if (all.isEmpty() && !moment.held().isEmpty()) {
      all = grips(soundings(moment.starting()), moment.pizzicato());
    }
    return all.isEmpty()
        ? divided.computeIfAbsent(soundings(moment.starting()), this::divided)
        : all;
  }

  private static List<PitchRequest> soundings(List<Note> notes) {
    return notes.stream().map(PitchRequest::of).collect(Collectors.toList());
  }

  private ImmutableList<Placement> placements(PitchRequest note) {
    return placements.computeIfAbsent(note, fingerboard::placements);
  }

  private ImmutableList<Placement> widePlacements(PitchRequest note) {
    return widePlacements.computeIfAbsent(note, n -> fingerboard.placements(n, true));
  }

  private ImmutableList<Grip> grips(List<PitchRequest> notes, boolean pizzicato) {
    return together.computeIfAbsent(
        new Together(notes, pizzicato), asked -> compute(asked.notes, asked.anyStrings));
  }

  private ImmutableList<Grip> compute(List<PitchRequest> notes, boolean anyStrings) {
    ImmutableList.Builder<Grip> found = ImmutableList.builder();
    if (notes.size() <= fingerboard.instrument().strings().size()) {
      extend(notes, new ArrayList<>(), anyStrings, found);
    }
    return found.build();
  }

  private void extend(
      List<PitchRequest> notes,
      List<Placement> taken,
      boolean anyStrings,
      ImmutableList.Builder<Grip> found) {
    if (taken.size() == notes.size()) {
      if ((anyStrings || neighbours(taken)) && fingerboard.needs(taken.get(0).frame(), taken)) {
        found.add(new Grip(ImmutableList.copyOf(taken), taken.get(0).frame(), false));
      }
      return;
    }
    PitchRequest note = notes.get(taken.size());
    for (Placement next : notes.size() > 1 ? widePlacements(note) : placements(note)) {
      if (taken.stream().allMatch(earlier -> fingerboard.together(earlier, next))) {
        taken.add(next);
        extend(notes, taken, anyStrings, found);
        taken.remove(taken.size() - 1);
      }
    }
  }

  /** The bow takes strings that lie side by side. */
  private static boolean neighbours(List<Placement> taken) {
    int[] strings = taken.stream().mapToInt(Placement::string).sorted().toArray();
    return strings[strings.length - 1] - strings[0] == strings.length - 1;
  }

  private ImmutableList<Grip> divided(List<PitchRequest> notes) {
    if (notes.stream().anyMatch(note -> placements(note).isEmpty())) {
      return ImmutableList.of();
    }
    ImmutableList.Builder<Grip> found = ImmutableList.builder();
    for (Frame frame : fingerboard.frames()) {
      List<Placement> each = new ArrayList<>();
      boolean[] used = new boolean[fingerboard.instrument().strings().size() + 1];
      for (PitchRequest note : notes) {
        Placement best =
            placements(note).stream()
                .min(
                    Comparator.<Placement>comparingInt(
                            p -> Math.abs(p.frame().index() - frame.index()))
                        .thenComparing(p -> used[p.string()])
                        .thenComparingDouble(Placement::stretch)
                        .thenComparingInt(Placement::string))
                .orElseThrow();
        used[best.string()] = true;
        each.add(best);
      }
      if (each.stream().anyMatch(p -> p.frame().index() == frame.index())) {
        found.add(new Grip(ImmutableList.copyOf(each), frame, true));
      }
    }
    return found.build();
  }
}
