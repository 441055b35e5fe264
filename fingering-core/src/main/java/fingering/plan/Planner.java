package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.fingerboard.LeftHand;
import fingering.fingerboard.Placement;
import fingering.music.Marks;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.search.Layers;
import fingering.search.PathFinder;
import fingering.search.Requirement;
import fingering.tables.Instrument;
import fingering.tables.Position;
import fingering.tables.Tuning;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes plans for one passage. Not safe for use by many threads at once. */
public final class Planner {
  /** More than any one note's height counts, in halves of a position. */
  private static final long HIGHER = 64;

  /** The sum of all penalties stays below this, so that the search can carry it. */
  private static final long MOST = 1L << 32;

  private final Passage passage;
  private final Scoring scoring;
  private final ImmutableList<ImmutableList<Grip>> grips;

  private Planner(Passage passage, Scoring scoring, ImmutableList<ImmutableList<Grip>> grips) {
    this.passage = passage;
    this.scoring = scoring;
    this.grips = grips;
  }

  /** A planner for a passage under a medium hand. */
  public static Planner of(Passage passage, Scoring scoring) {
    return of(passage, scoring, LeftHand.MEDIUM);
  }

  /**
   * A planner for a passage: every grip of every moment is enumerated once.
   *
   * @throws InfeasibleBriefException if a note lies out of the instrument's range
   */
  public static Planner of(Passage passage, Scoring scoring, LeftHand hand) {
    GripFinder finder = new GripFinder(Fingerboard.of(passage.instrument(), hand));
    ImmutableList.Builder<ImmutableList<Grip>> all = ImmutableList.builder();
    for (Moment moment : passage.moments()) {
      ImmutableList<Grip> found = finder.grips(moment);
      if (found.isEmpty()) {
        throw outOfRange(passage, moment);
      }
      all.add(found);
    }
    return new Planner(passage, scoring, all.build());
  }

  private static InfeasibleBriefException outOfRange(Passage passage, Moment moment) {
    Instrument instrument = passage.instrument();
    boolean standard = instrument.tuning().equals(Tuning.STANDARD);
    String tuning = "tuning '" + instrument.tuning() + "'";
    boolean below =
        moment.struck().stream().anyMatch(note -> note.midi() < instrument.lowest().midi());
    String why =
        below
            ? "it lies below the lowest string"
                + (standard ? "" : " (" + lowest(instrument) + ", " + tuning + ")")
            : "it lies beyond the end of the fingerboard" + (standard ? "" : " (" + tuning + ")");
    return new InfeasibleBriefException(
        "The "
            + instrument.spoken()
            + " cannot play "
            + names(moment)
            + " in "
            + moment.place()
            + " of "
            + passage.partName()
            + ": "
            + why
            + "; check the part, "
            + (standard ? "" : "--tuning, ")
            + "--instrument or the transposition.");
  }

  /**
   * The note itself is named as written, so where that sounds elsewhere the lowest says it sounds.
   */
  private static String lowest(Instrument instrument) {
    return (instrument.writtenOctaves() == 0 ? "" : "sounding ") + instrument.lowest().display();
  }

  private static String names(Moment moment) {
    return moment.struck().stream()
        .map(note -> note.written().display())
        .collect(Collectors.joining("+"));
  }

  /**
   * The best plan that meets a brief.
   *
   * @throws InfeasibleBriefException if there is none
   */
  public Plan plan(Brief brief) {
    Layers layers = layers(brief);
    return PathFinder.best(layers, brief.requirement())
        .map(path -> PlanAssembly.plan(brief, passage, scoring, path))
        .orElseThrow(() -> unmet(brief, layers));
  }

  /**
   * The best plan that meets a brief, or empty where the passage cannot show what is required.
   *
   * @throws InfeasibleBriefException if a note cannot be reached in the positions allowed
   */
  public Optional<Plan> tryPlan(Brief brief) {
    return PathFinder.best(layers(brief), brief.requirement())
        .map(path -> PlanAssembly.plan(brief, passage, scoring, path));
  }

  /**
   * The best plans of a brief that a player can tell apart, best first; fewer where there are
   * fewer. The first is the best plan. Two plans differ where a note has another string or finger,
   * or, stopped, another position; where the hand waits under an open string is no difference, and
   * the best stands for all that are alike.
   *
   * @param k how many, 1 to {@value PathFinder#MOST}
   * @throws InfeasibleBriefException if there is none
   * @throws IllegalArgumentException if k is out of range
   */
  public ImmutableList<Plan> plans(Brief brief, int k) {
    Layers layers = layers(brief);
    ImmutableList<Plan> plans =
        PathFinder.best(layers, brief.requirement(), k).stream()
            .map(path -> PlanAssembly.plan(brief, passage, scoring, path))
            .collect(ImmutableList.toImmutableList());
    if (plans.isEmpty()) {
      throw unmet(brief, layers);
    }
    return plans;
  }

  private Layers layers(Brief brief) {
    ImmutableList.Builder<ImmutableList<Grip>> allowed = ImmutableList.builder();
    for (int m = 0; m < grips.size(); m++) {
      Moment moment = passage.moments().get(m);
      ImmutableList<Grip> left =
          grips.get(m).stream()
              .filter(grip -> !brief.strict() || inside(brief, grip))
              .collect(ImmutableList.toImmutableList());
      if (left.isEmpty()) {
        throw unreachable(brief, moment, grips.get(m));
      }
      if (brief.keepPrinted()) {
        left = asPrinted(moment, left);
      }
      allowed.add(left);
    }
    return new Layers(
        passage.moments(), allowed.build(), scoring, grip -> penalty(brief, grip, outside()));
  }

  /** Whether every stopped note of the grip, and its hand, are where the brief wants them. */
  private static boolean inside(Brief brief, Grip grip) {
    if (!brief.allows(grip.frame().position())) {
      return false;
    }
    for (Placement placement : grip.placements()) {
      if (!placement.open() && !brief.allows(placement.frame().position())) {
        return false;
      }
    }
    return true;
  }

  /** What a note outside offends, whatever its height: more than all heights together. */
  private long outside() {
    long moments = grips.size();
    return Math.min(HIGHER * moments, MOST / (moments * passage.instrument().strings().size()));
  }

  /** Counts the stopped notes outside the preferred positions, and adds how high they lie. */
  private static long penalty(Brief brief, Grip grip, long outside) {
    if (brief.strict()) {
      return 0;
    }
    long penalty = 0;
    for (Placement placement : grip.placements()) {
      Position position = placement.frame().position();
      if (!placement.open() && !brief.allows(position)) {
        penalty += outside + position.halves();
      }
    }
    return penalty;
  }

  /** The grips that agree with what is printed; all of them where none does. */
  private static ImmutableList<Grip> asPrinted(Moment moment, ImmutableList<Grip> grips) {
    ImmutableList<Grip> kept =
        grips.stream()
            .filter(grip -> agrees(moment, grip))
            .collect(ImmutableList.toImmutableList());
    return kept.isEmpty() ? grips : kept;
  }

  private static boolean agrees(Moment moment, Grip grip) {
    ImmutableList<Note> notes = grip.notes(moment);
    for (int i = 0; i < notes.size(); i++) {
      Marks marks = notes.get(i).marks();
      Placement placement = grip.placements().get(i);
      if (!marks.finger().map(placement.finger().symbol()::equals).orElse(true)
          || marks.string().orElse(placement.string()) != placement.string()) {
        return false;
      }
    }
    return true;
  }

  private InfeasibleBriefException unreachable(
      Brief brief, Moment moment, ImmutableList<Grip> all) {
    String where =
        all.stream()
            .map(grip -> grip.frame().position())
            .distinct()
            .sorted()
            .map(Object::toString)
            .limit(4)
            .collect(Collectors.joining(", "));
    String positions =
        brief.positions().stream().sorted().map(Object::toString).collect(Collectors.joining(", "));
    return new InfeasibleBriefException(
        names(moment)
            + " in "
            + moment.place()
            + " cannot be reached in the positions allowed ("
            + positions
            + "); it can be taken in position "
            + where
            + ", so allow one of these.");
  }

  private InfeasibleBriefException unmet(Brief brief, Layers layers) {
    boolean without = PathFinder.best(layers, Requirement.NONE).isPresent();
    return new InfeasibleBriefException(
        without
            ? "No fingering of this passage shows what '"
                + brief.name()
                + "' must show: "
                + brief.requirement()
                + "; ask for less, or allow more positions."
            : "No fingering of this passage can be found.");
  }
}
