package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.primitives.ImmutableDoubleArray;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Grip;
import fingering.tables.Instrument.HandKind;
import java.util.Optional;

/**
 * The rule of habit: players usually take a note so in such a place. Learned from fingered music;
 * see {@link HabitNetwork}. The best placement of a note costs nothing, and no placement costs more
 * than 600 points, so that no habit outweighs a stretch or a shift. The rule judges single bowed
 * notes only.
 *
 * @param networks the numbers of the network of each kind of hand that has one, in points
 */
public record Habit(ImmutableMap<HandKind, ImmutableDoubleArray> networks)
    implements ComparingRule {
  /** The id of the rule. */
  public static final String ID = "habit";

  /** No habit. */
  public static final Habit NONE = new Habit(ImmutableMap.of());

  /** The highest amount. */
  public static final long MAX_POINTS = 600;

  /**
   * Checks the networks.
   *
   * @throws IllegalArgumentException if one does not have {@link HabitNetwork#SIZE} numbers
   */
  public Habit {
    if (networks.values().stream().anyMatch(numbers -> numbers.length() != HabitNetwork.SIZE)) {
      throw new IllegalArgumentException("a network has " + HabitNetwork.SIZE + " numbers");
    }
  }

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
    return "Players usually take such a note with another finger or on another string, as learned from fingered music.";
  }

  @Override
  public String unit() {
    return "point";
  }

  @Override
  public boolean idle() {
    return networks.isEmpty();
  }

  @Override
  public boolean idle(HandKind hand) {
    return !networks.containsKey(hand);
  }

  @Override
  public ImmutableLongArray amounts(NoteContext context, ImmutableList<Grip> grips) {
    ImmutableDoubleArray numbers =
        network(context, grips)
            .flatMap(hand -> Optional.ofNullable(networks.get(hand)))
            .orElse(ImmutableDoubleArray.of());
    long[] amounts = new long[grips.size()];
    if (numbers.isEmpty()) {
      return ImmutableLongArray.copyOf(amounts);
    }
    double[] scores = HabitNetwork.scores(numbers.toArray(), context.line(), grips);
    double best = Double.NEGATIVE_INFINITY;
    for (double score : scores) {
      best = Math.max(best, score);
    }
    for (int j = 0; j < scores.length; j++) {
      amounts[j] = Math.min(MAX_POINTS, Math.round(best - scores[j]));
    }
    return ImmutableLongArray.copyOf(amounts);
  }

  /**
   * The kind of hand whose network judges the grips of a moment; empty for double stops, harmonics
   * and plucked notes.
   */
  public static Optional<HandKind> network(NoteContext context, ImmutableList<Grip> grips) {
    Grip any = grips.get(0);
    boolean judged =
        context.sounding() == 1
            && any.placements().size() == 1
            && any.top().touch().isEmpty()
            && !context.plucked();
    return judged ? Optional.of(any.frame().hand()) : Optional.empty();
  }
}
