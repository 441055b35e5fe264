package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Every grip with which the hand can take a moment of music. Not safe for use by many threads. */
public final class GripFinder {
  private final Fingerboard fingerboard;
  private final Map<Pitch, ImmutableList<Placement>> placements = new HashMap<>();
  private final Map<Pitch, ImmutableList<Placement>> widePlacements = new HashMap<>();
  private final Map<List<Pitch>, ImmutableList<Grip>> together = new HashMap<>();

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
    if (moment.sounding().size() == 1) {
      return grips(List.of(moment.struck().get(0).sounding()), moment.pizzicato());
    }
    ImmutableList<Grip> all = grips(pitches(moment.sounding()), moment.pizzicato());
    if (all.isEmpty() && !moment.held().isEmpty()) {
      all = grips(pitches(moment.struck()), moment.pizzicato());
    }
    return all.isEmpty() ? divided(pitches(moment.struck())) : all;
  }

  private static List<Pitch> pitches(List<Note> notes) {
    return notes.stream().map(Note::sounding).collect(Collectors.toList());
  }

  private ImmutableList<Placement> placements(Pitch pitch) {
    return placements.computeIfAbsent(pitch, fingerboard::placements);
  }

  private ImmutableList<Placement> widePlacements(Pitch pitch) {
    return widePlacements.computeIfAbsent(pitch, p -> fingerboard.placements(p, true));
  }

  private ImmutableList<Grip> grips(List<Pitch> pitches, boolean pizzicato) {
    if (pizzicato && pitches.size() > 1) {
      return compute(pitches, true);
    }
    return together.computeIfAbsent(pitches, p -> compute(p, false));
  }

  private ImmutableList<Grip> compute(List<Pitch> pitches, boolean anyStrings) {
    ImmutableList.Builder<Grip> found = ImmutableList.builder();
    if (pitches.size() <= fingerboard.instrument().strings().size()) {
      extend(pitches, new ArrayList<>(), anyStrings, found);
    }
    return found.build();
  }

  private void extend(
      List<Pitch> pitches,
      List<Placement> taken,
      boolean anyStrings,
      ImmutableList.Builder<Grip> found) {
    if (taken.size() == pitches.size()) {
      if (anyStrings || neighbours(taken)) {
        found.add(new Grip(ImmutableList.copyOf(taken), taken.get(0).frame(), false));
      }
      return;
    }
    Pitch pitch = pitches.get(taken.size());
    for (Placement next : pitches.size() > 1 ? widePlacements(pitch) : placements(pitch)) {
      if (taken.stream().allMatch(earlier -> fingerboard.together(earlier, next))) {
        taken.add(next);
        extend(pitches, taken, anyStrings, found);
        taken.remove(taken.size() - 1);
      }
    }
  }

  /** The bow takes strings that lie side by side. */
  private static boolean neighbours(List<Placement> taken) {
    int[] strings = taken.stream().mapToInt(Placement::string).sorted().toArray();
    return strings[strings.length - 1] - strings[0] == strings.length - 1;
  }

  private ImmutableList<Grip> divided(List<Pitch> pitches) {
    if (pitches.stream().anyMatch(pitch -> placements(pitch).isEmpty())) {
      return ImmutableList.of();
    }
    ImmutableList.Builder<Grip> found = ImmutableList.builder();
    for (Frame frame : fingerboard.frames()) {
      List<Placement> each = new ArrayList<>();
      boolean[] used = new boolean[fingerboard.instrument().strings().size() + 1];
      for (Pitch pitch : pitches) {
        Placement best =
            placements(pitch).stream()
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
