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
 * Finds the possible grips for a moment. Results are cached: moments with the same notes get the
 * same list object. Safe for use by many threads.
 */
public final class GripFinder {
  private final Fingerboard fingerboard;
  private final Map<PitchRequest, ImmutableList<Placement>> placements = new ConcurrentHashMap<>();
  private final Map<PitchRequest, ImmutableList<Placement>> widePlacements =
      new ConcurrentHashMap<>();
  private final Map<PitchRequest, ImmutableList<Grip>> single = new ConcurrentHashMap<>();
  private final Map<Chord, ImmutableList<Grip>> chords = new ConcurrentHashMap<>();
  private final Map<List<PitchRequest>, ImmutableList<Grip>> divided = new ConcurrentHashMap<>();

  /** Notes to hold together; bowed ones must be on adjacent strings, plucked ones on any. */
  private record Chord(List<PitchRequest> notes, boolean anyStrings) {}

  /** A finder for a fingerboard, with an empty cache. */
  public GripFinder(Fingerboard fingerboard) {
    this.fingerboard = fingerboard;
  }

  /**
   * The grips for all {@link Moment#sounding() sounding} notes of a moment. If there are none, the
   * grips for the {@link Moment#starting() starting} notes, with the held notes released. If there
   * are none either, {@link Grip#divided() divided} grips for the starting notes. Empty only if a
   * note is out of range.
   */
  public ImmutableList<Grip> grips(Moment moment) {
    if (moment.held().isEmpty() && moment.starting().size() == 1) {
      return single.computeIfAbsent(
          PitchRequest.of(moment.starting().get(0)), note -> compute(List.of(note), false));
    }
    ImmutableList<Grip> all = grips(requests(moment.sounding()), moment.pizzicato());
    if (all.isEmpty() && !moment.held().isEmpty()) {
      all = grips(requests(moment.starting()), moment.pizzicato());
    }
    return all.isEmpty()
        ? divided.computeIfAbsent(requests(moment.starting()), this::divided)
        : all;
  }

  /** Whether the instrument has a note: a finger or an open string plays it alone. */
  public boolean reaches(Note note) {
    return !single
        .computeIfAbsent(PitchRequest.of(note), request -> compute(List.of(request), false))
        .isEmpty();
  }

  private static List<PitchRequest> requests(List<Note> notes) {
    return notes.stream().map(PitchRequest::of).collect(Collectors.toList());
  }

  private ImmutableList<Placement> placements(PitchRequest note) {
    return placements.computeIfAbsent(note, fingerboard::placements);
  }

  private ImmutableList<Placement> widePlacements(PitchRequest note) {
    return widePlacements.computeIfAbsent(note, n -> fingerboard.placements(n, true));
  }

  private ImmutableList<Grip> grips(List<PitchRequest> notes, boolean pizzicato) {
    return chords.computeIfAbsent(
        new Chord(notes, pizzicato), chord -> compute(chord.notes, chord.anyStrings));
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
      List<Placement> chosen,
      boolean anyStrings,
      ImmutableList.Builder<Grip> found) {
    if (chosen.size() == notes.size()) {
      if ((anyStrings || adjacent(chosen))
          && fingerboard.allows(chosen.get(0).frame(), chosen)
          && Fingerboard.barsReach(chosen)) {
        found.add(new Grip(ImmutableList.copyOf(chosen), chosen.get(0).frame(), false));
      }
      return;
    }
    PitchRequest note = notes.get(chosen.size());
    for (Placement next : notes.size() > 1 ? widePlacements(note) : placements(note)) {
      if (chosen.stream().allMatch(earlier -> fingerboard.canHoldTogether(earlier, next))) {
        chosen.add(next);
        extend(notes, chosen, anyStrings, found);
        chosen.remove(chosen.size() - 1);
      }
    }
  }

  /** Whether the strings are adjacent, so that the bow can play them together. */
  private static boolean adjacent(List<Placement> chosen) {
    int[] strings = chosen.stream().mapToInt(Placement::string).sorted().toArray();
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
