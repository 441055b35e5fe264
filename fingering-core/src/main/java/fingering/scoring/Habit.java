package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableDoubleArray;
import com.google.common.primitives.ImmutableIntArray;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Grip;

/**
 * The rule of habit: players take a note so in such a place. Learned from fingered music; see
 * {@link HabitNetwork}. The cheapest placement of a note costs nothing, and no placement costs more
 * than {@link #MAX_POINTS}, so that no habit outweighs a stretch or a shift. It judges single notes
 * only, on violin and viola by one network, on the cello by another, and nothing on the bass.
 *
 * @param violin the numbers of the network for violin and viola, in points; empty if there is none
 * @param cello the same for the cello
 */
public record Habit(ImmutableDoubleArray violin, ImmutableDoubleArray cello)
    implements ComparingRule {
  /** The id of the rule. */
  public static final String ID = "habit";

  /** No habit. */
  public static final Habit NONE = new Habit(ImmutableDoubleArray.of(), ImmutableDoubleArray.of());

  /** The highest amount. */
  public static final long MAX_POINTS = 1500;

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String name() {
    return "Habit";
  }

  @Override
  public String explanation() {
    return "Players usually take such a note elsewhere, as learned from fingered music.";
  }

  @Override
  public String unit() {
    return "point";
  }

  @Override
  public boolean idle() {
    return violin.isEmpty() && cello.isEmpty();
  }

  @Override
  public ImmutableLongArray amounts(NoteContext context, ImmutableList<Grip> grips) {
    long[] amounts = new long[grips.size()];
    double[] numbers = numbers(context, grips).toArray();
    if (numbers.length == 0) {
      return ImmutableLongArray.copyOf(amounts);
    }
    ImmutableIntArray line = HabitNetwork.inputs(context.line());
    double[] sums = HabitNetwork.sums(numbers, line);
    double[] scores = new double[amounts.length];
    double best = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < scores.length; j++) {
      scores[j] = HabitNetwork.score(numbers, sums, HabitNetwork.inputs(grips.get(j).top()));
      best = Math.max(best, scores[j]);
    }
    for (int j = 0; j < scores.length; j++) {
      amounts[j] = Math.min(MAX_POINTS, Math.round(best - scores[j]));
    }
    return ImmutableLongArray.copyOf(amounts);
  }

  private ImmutableDoubleArray numbers(NoteContext context, ImmutableList<Grip> grips) {
    return switch (family(context, grips)) {
      case VIOLIN -> violin;
      case CELLO -> cello;
      case NONE -> ImmutableDoubleArray.of();
    };
  }

  /** The networks. */
  public enum Family {
    /** Violin and viola. */
    VIOLIN,
    /** Cello. */
    CELLO,
    /** No network: double stops, harmonics, plucked notes, the bass. */
    NONE
  }

  /** The network for the grips of a moment. */
  public static Family family(NoteContext context, ImmutableList<Grip> grips) {
    Grip any = grips.get(0);
    if (context.sounding() != 1
        || any.placements().size() != 1
        || any.top().touch().isPresent()
        || context.plucked()) {
      return Family.NONE;
    }
    return switch (any.frame().hand()) {
      case VIOLIN -> Family.VIOLIN;
      case CELLO -> Family.CELLO;
      case BASS -> Family.NONE;
    };
  }
}
