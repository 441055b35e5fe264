package fingering.music;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.Ints;
import java.util.List;
import java.util.Optional;

/**
 * The movements of a part, as far as its measure numbers show them: where they begin again at 0 or
 * 1, a new movement begins.
 *
 * @param starts indices of the measures at which the second and later movements begin, in order
 */
public record Movements(ImmutableList<Integer> starts) {
  /** A part in one movement. */
  public static final Movements ONE = new Movements(ImmutableList.of());

  private static final ImmutableList<String> ORDINALS =
      ImmutableList.of("first", "second", "third", "fourth", "fifth", "sixth");

  /** The movements of some measures. */
  public static Movements of(List<Measure> measures) {
    ImmutableList.Builder<Integer> starts = ImmutableList.builder();
    int last = 0;
    for (Measure measure : measures) {
      Optional<Integer> number = Optional.ofNullable(Ints.tryParse(measure.number()));
      if (number.isPresent()) {
        if (number.get() <= 1 && last > 1) {
          starts.add(measure.index());
        }
        last = number.get();
      }
    }
    return new Movements(starts.build());
  }

  /** How many there are, at least 1. */
  public int count() {
    return starts.size() + 1;
  }

  /**
   * The index of the first measure of a movement. For the one after the last, this is the number of
   * measures.
   *
   * @param number the number of the movement, from 1
   * @param measures the number of measures of the part
   */
  public int start(int number, int measures) {
    return number == 1 ? 0 : number > count() ? measures : starts.get(number - 2);
  }

  /** The number of the movement that a measure belongs to, from 1. */
  public int number(int measureIndex) {
    return 1 + (int) starts.stream().filter(start -> start <= measureIndex).count();
  }

  /**
   * A phrase for the movement of a measure, to follow its number: {@code " of the second
   * movement"}; empty for the first.
   */
  public String phrase(int measureIndex) {
    int number = number(measureIndex);
    return number == 1
        ? ""
        : number <= ORDINALS.size()
            ? " of the " + ORDINALS.get(number - 1) + " movement"
            : " of movement " + number;
  }
}
