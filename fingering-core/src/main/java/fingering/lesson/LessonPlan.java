package fingering.lesson;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.demand.DemandParser;
import fingering.plan.Brief;
import fingering.tables.FingeringException;
import fingering.tables.NearWord;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.UnaryOperator;

/**
 * A plan of a lesson: a name, and what the plan must show, keep or avoid.
 *
 * @param name the name of the plan, one line
 * @param choose the plan of a comparison that it starts from, one of {@link #CHOICES}; empty for
 *     the cheapest plan
 * @param demands the demands as written in briefs, by their keys in the order of {@link
 *     DemandParser#KEYS}
 */
public record LessonPlan(
    String name, Optional<String> choose, ImmutableListMultimap<String, String> demands) {
  /** The words for the plans of a comparison. */
  public static final ImmutableList<String> CHOICES =
      ImmutableList.of("first", "third", "partly", "second", "free");

  private static final String FREE = "free";

  /**
   * Checks the values and sorts the demands by their keys.
   *
   * @throws FingeringException if there is neither a choice nor a demand, or a value is unknown or
   *     cannot be written on one line
   */
  public LessonPlan {
    Lesson.requireValue("name", name);
    if (choose.isEmpty() && demands.isEmpty()) {
      throw new FingeringException(
          "the plan '%s' asks for nothing; add choose or a demand, such as 'stay: 3@6-11'"
              .formatted(name));
    }
    if (choose.isPresent() && !CHOICES.contains(choose.get())) {
      throw new FingeringException(
          "'%s' is not a plan to choose; %s"
              .formatted(choose.get(), NearWord.advice(choose.get(), CHOICES)));
    }
    for (var demand : demands.entries()) {
      if (!DemandParser.KEYS.contains(demand.getKey())) {
        throw new FingeringException("'" + demand.getKey() + "' is not a demand");
      }
      Lesson.requireValue(demand.getKey(), demand.getValue());
    }
    ImmutableListMultimap.Builder<String, String> sorted = ImmutableListMultimap.builder();
    for (String key : DemandParser.KEYS) {
      sorted.putAll(key, demands.get(key));
    }
    demands = sorted.build();
  }

  /**
   * A copy with more demands. A new demand replaces an old one about the same thing: the same note
   * to fix, or the same measures to stay in.
   *
   * @param more demands by key, as in {@link #demands}
   */
  public LessonPlan with(ImmutableListMultimap<String, String> more) {
    ImmutableListMultimap.Builder<String, String> all = ImmutableListMultimap.builder();
    for (var old : demands.entries()) {
      boolean replaced =
          more.get(old.getKey()).stream()
              .anyMatch(
                  one -> about(old.getKey(), one).equals(about(old.getKey(), old.getValue())));
      if (!replaced) {
        all.put(old);
      }
    }
    return new LessonPlan(name, choose, all.putAll(more).build());
  }

  /**
   * A copy without some demands. If it then asks for nothing, it starts from the free plan.
   *
   * @param dropped whether to leave out a demand, by its key and value
   */
  public LessonPlan without(BiPredicate<String, String> dropped) {
    ImmutableListMultimap.Builder<String, String> some = ImmutableListMultimap.builder();
    demands.forEach(
        (key, value) -> {
          if (!dropped.test(key, value)) {
            some.put(key, value);
          }
        });
    ImmutableListMultimap<String, String> left = some.build();
    return new LessonPlan(name, left.isEmpty() ? choose.or(() -> Optional.of(FREE)) : choose, left);
  }

  /** What a demand is about; a plan has one demand about it. */
  private static String about(String key, String demand) {
    int at = demand.lastIndexOf('@');
    return switch (key) {
      case "fix", "show", "show-stay", "show-shift" -> before(demand, '=');
      case "allow", "strings", "stay" -> at < 0 ? "" : demand.substring(at).replace(" ", "");
      default -> demand.strip();
    };
  }

  private static String before(String text, char sign) {
    int end = text.indexOf(sign);
    return (end < 0 ? text : text.substring(0, end)).strip();
  }

  /** The key of the demand to keep an earlier plan, whose value names a file. */
  private static final String KEEP = "keep-plan";

  /**
   * A copy in which the files of earlier plans to keep are named differently.
   *
   * @param renaming returns the new name; what follows an {@code @} are measures, and stays
   */
  public LessonPlan withFiles(UnaryOperator<String> renaming) {
    ImmutableListMultimap.Builder<String, String> all = ImmutableListMultimap.builder();
    demands.forEach((key, value) -> all.put(key, key.equals(KEEP) ? renaming.apply(value) : value));
    return new LessonPlan(name, choose, all.build());
  }

  /** A copy with another name. */
  public LessonPlan withName(String newName) {
    return new LessonPlan(newName, choose, demands);
  }

  /** Whether another plan asks for the same, under any name. */
  public boolean asksTheSame(LessonPlan other) {
    return choose.equals(other.choose) && demands.equals(other.demands);
  }

  /**
   * The brief of the demands.
   *
   * @param parser the parser for the passage
   * @throws FingeringException if a demand does not fit the passage
   */
  public Brief brief(DemandParser parser) {
    Brief.Builder brief = Brief.builder(name);
    demands
        .entries()
        .forEach(
            demand -> parser.read(demand.getKey(), demand.getValue()).forEach(brief::addDemand));
    return brief.build();
  }
}
