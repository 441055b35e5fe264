package fingering.lesson;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.MeasureBeat;
import fingering.practice.Circle;
import fingering.tables.FingeringException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the teacher circles in the part: all that is found, apart from what is left out.
 *
 * @param shown whether the local page shows the rings in the music
 * @param leftOut what is not circled: kinds, {@code accent}, and single things by measure, beat and
 *     kind, {@code 12.1 dynamic}
 */
public record LessonCircles(boolean shown, ImmutableSet<String> leftOut) {
  /** All that is found, without rings on the local page. */
  public static final LessonCircles ALL = new LessonCircles(false, ImmutableSet.of());

  /**
   * Checks the names.
   *
   * @throws FingeringException if one names nothing that can be circled; the message is one
   *     sentence
   */
  public LessonCircles {
    leftOut.forEach(LessonCircles::check);
  }

  private static void check(String name) {
    List<String> words = List.of(name.split(" ", 2));
    boolean known =
        kinds().anyMatch(words.get(words.size() - 1)::equals)
            && (words.size() == 1 || isPlace(words.get(0)));
    if (!known) {
      throw new FingeringException(
          "'%s' is not something to circle; write a kind (%s), or measure, beat and kind, such as 12.1 dynamic"
              .formatted(name, kinds().collect(Collectors.joining(", "))));
    }
  }

  private static Stream<String> kinds() {
    return Arrays.stream(Circle.Kind.values()).map(Circle.Kind::word);
  }

  private static boolean isPlace(String text) {
    try {
      MeasureBeat.parse(text);
      return true;
    } catch (FingeringException e) {
      return false;
    }
  }

  /** Whether something is circled. */
  public boolean has(Circle circle) {
    return !leftOut.contains(circle.kind().word()) && !leftOut.contains(circle.name());
  }

  /** What is circled of what was found, in the same order. */
  public ImmutableList<Circle> of(List<Circle> found) {
    return found.stream().filter(this::has).collect(ImmutableList.toImmutableList());
  }

  /** A copy whose rings the local page shows, or does not. */
  public LessonCircles showing(boolean now) {
    return new LessonCircles(now, leftOut);
  }

  /**
   * A copy in which something is circled, or left out.
   *
   * @param name a kind, or the name of a circle
   * @param found all that was found
   */
  public LessonCircles with(String name, boolean circled, List<Circle> found) {
    ImmutableSet.Builder<String> left = ImmutableSet.builder();
    leftOut.stream().filter(old -> !old.equals(name) && !isOf(old, name)).forEach(left::add);
    if (!circled) {
      left.add(name);
      return new LessonCircles(shown, left.build());
    }
    String kind = name.substring(name.indexOf(' ') + 1);
    if (!kind.equals(name) && leftOut.contains(kind)) {
      // The others of the kind stay left out, by their own names.
      ImmutableSet.Builder<String> single = ImmutableSet.builder();
      left.build().stream().filter(old -> !old.equals(kind)).forEach(single::add);
      found.stream()
          .map(Circle::name)
          .filter(other -> isOf(other, kind) && !other.equals(name))
          .forEach(single::add);
      return new LessonCircles(shown, single.build());
    }
    return new LessonCircles(shown, left.build());
  }

  /** Whether a name is that of a single thing of a kind. */
  private static boolean isOf(String name, String kind) {
    return name.endsWith(" " + kind);
  }
}
