package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Surroundings;
import java.util.SplittableRandom;

/**
 * A small neural network that scores a placement of a single note by the line around it: the higher
 * the score, the more often players take the note so. One hidden layer, softsign activation, binary
 * inputs, of which only a few are on. The numbers are weights in one array.
 */
public final class HabitNetwork {
  /** Number of hidden units. */
  private static final int HIDDEN = 16;

  private static final int INTERVAL_CLASSES = 12;
  private static final int CONTEXT = 4 * INTERVAL_CLASSES + 3 + 3 + 4;

  private static final int STRINGS = 4;
  private static final int FINGERS = 6;
  private static final int POSITIONS = 10;
  private static final int PLACES = 16;
  private static final int PLACEMENT = STRINGS + FINGERS + POSITIONS + PLACES + STRINGS * FINGERS;

  private static final int TO_CONTEXT = HIDDEN;
  private static final int TO_PLACEMENT = TO_CONTEXT + CONTEXT * HIDDEN;
  private static final int TO_OUT = TO_PLACEMENT + PLACEMENT * HIDDEN;
  private static final int TO_DIRECT = TO_OUT + HIDDEN;

  /** The number of numbers. */
  public static final int SIZE = TO_DIRECT + PLACEMENT;

  /** The spread of the numbers before training. */
  private static final double START = 0.3;

  private HabitNetwork() {}

  /** The numbers before training: small, and the same every time. */
  public static double[] start() {
    SplittableRandom random = new SplittableRandom(1);
    double[] numbers = new double[SIZE];
    for (int i = TO_CONTEXT; i < TO_DIRECT; i++) {
      numbers[i] = START * (random.nextDouble() - 0.5);
    }
    return numbers;
  }

  /** The inputs of a line that are on. */
  public static ImmutableIntArray inputs(LineContext line) {
    ImmutableIntArray.Builder on = ImmutableIntArray.builder();
    for (int i = 0; i < line.intervals().length(); i++) {
      on.add(i * INTERVAL_CLASSES + intervalClass(line.intervals().get(i)));
    }
    int next = line.intervals().length() * INTERVAL_CLASSES;
    on.add(next + line.pace().level());
    on.add(next + 3 + line.length());
    next += 6;
    boolean[] flags = {line.slurred(), line.slursOn(), line.slursPrinted(), line.onBeat()};
    for (int i = 0; i < flags.length; i++) {
      if (flags[i]) {
        on.add(next + i);
      }
    }
    return on.build();
  }

  private static int intervalClass(int semitones) {
    if (semitones == Surroundings.NONE) {
      return 0;
    }
    int size = Math.abs(semitones);
    int step = size <= 2 ? size : size <= 4 ? 3 : size <= 7 ? 4 : 5;
    return 6 + (semitones < 0 ? -step : step);
  }

  /** The inputs of a placement that are on. */
  public static ImmutableIntArray inputs(Placement placement) {
    int string = Math.min(placement.string(), STRINGS) - 1;
    int finger = finger(placement);
    ImmutableIntArray.Builder on = ImmutableIntArray.builder();
    on.add(string);
    int next = STRINGS;
    on.add(next + finger);
    next += FINGERS;
    if (!placement.open()) {
      on.add(next + position(placement));
    }
    next += POSITIONS;
    on.add(next + place(placement.semitones()));
    next += PLACES;
    on.add(next + string * FINGERS + finger);
    return on.build();
  }

  private static int finger(Placement placement) {
    return placement.finger() == Finger.THUMB ? FINGERS - 1 : placement.finger().number();
  }

  private static int position(Placement placement) {
    return placement.frame().thumb().isPresent()
        ? POSITIONS - 1
        : Math.min(POSITIONS - 2, placement.frame().position().number());
  }

  private static int place(int semitones) {
    return semitones <= 12
        ? Math.max(0, semitones)
        : semitones <= 14 ? 13 : semitones <= 17 ? 14 : PLACES - 1;
  }

  /** The scores of the grips of a single note. */
  static double[] scores(double[] numbers, LineContext line, ImmutableList<Grip> grips) {
    double[] sums = sums(numbers, inputs(line));
    double[] scores = new double[grips.size()];
    for (int j = 0; j < scores.length; j++) {
      scores[j] = score(numbers, sums, inputs(grips.get(j).top()));
    }
    return scores;
  }

  /** The sums at the hidden units by the line alone. */
  public static double[] sums(double[] numbers, ImmutableIntArray line) {
    double[] sums = new double[HIDDEN];
    System.arraycopy(numbers, 0, sums, 0, HIDDEN);
    add(numbers, TO_CONTEXT, line, sums);
    return sums;
  }

  private static void add(double[] numbers, int from, ImmutableIntArray inputs, double[] sums) {
    for (int i = 0; i < inputs.length(); i++) {
      int row = from + inputs.get(i) * HIDDEN;
      for (int h = 0; h < HIDDEN; h++) {
        sums[h] += numbers[row + h];
      }
    }
  }

  /**
   * The score of a placement.
   *
   * @param sums the sums by the line, see {@link #sums}
   */
  public static double score(double[] numbers, double[] sums, ImmutableIntArray placement) {
    double[] all = sums.clone();
    add(numbers, TO_PLACEMENT, placement, all);
    double score = 0;
    for (int h = 0; h < HIDDEN; h++) {
      score += numbers[TO_OUT + h] * all[h] / (1 + Math.abs(all[h]));
    }
    for (int i = 0; i < placement.length(); i++) {
      score += numbers[TO_DIRECT + placement.get(i)];
    }
    return score;
  }

  /**
   * Adds the derivative of a score by each number, times a slope.
   *
   * @param gradient receives the derivatives
   * @param first index of the first number in the gradient
   */
  public static void addGradient(
      double[] numbers,
      ImmutableIntArray line,
      double[] sums,
      ImmutableIntArray placement,
      double slope,
      double[] gradient,
      int first) {
    double[] all = sums.clone();
    add(numbers, TO_PLACEMENT, placement, all);
    for (int h = 0; h < HIDDEN; h++) {
      double size = 1 + Math.abs(all[h]);
      gradient[first + TO_OUT + h] += slope * all[h] / size;
      all[h] = slope * numbers[TO_OUT + h] / (size * size);
      gradient[first + h] += all[h];
    }
    addRows(line, TO_CONTEXT, all, gradient, first);
    addRows(placement, TO_PLACEMENT, all, gradient, first);
    for (int i = 0; i < placement.length(); i++) {
      gradient[first + TO_DIRECT + placement.get(i)] += slope;
    }
  }

  /** Multiplies all scores of a network by a factor. */
  public static void scale(double[] numbers, double factor) {
    for (int i = TO_OUT; i < SIZE; i++) {
      numbers[i] *= factor;
    }
  }

  private static void addRows(
      ImmutableIntArray inputs, int from, double[] slopes, double[] gradient, int first) {
    for (int i = 0; i < inputs.length(); i++) {
      int row = first + from + inputs.get(i) * HIDDEN;
      for (int h = 0; h < HIDDEN; h++) {
        gradient[row + h] += slopes[h];
      }
    }
  }
}
