package fingering.web.lesson;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Range;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.lesson.PlanName;
import fingering.music.Measure;
import fingering.music.MeasureBeat;
import fingering.music.Passage;
import fingering.music.Place;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Changes of the chosen plan of a lesson. A usual plan is never changed: a plan of the teacher's
 * own takes its place, which starts from it.
 *
 * @param lesson the lesson before the change
 * @param passage its music
 * @param shown the plan that the page shows
 */
public record LessonEdit(Lesson lesson, Passage passage, Plan shown) {
  private static final String FIX = "fix";

  /** More than three decimals of a beat are needed by no rhythm. */
  private static final int DECIMALS = 3;

  /** The plan that a change starts from: the chosen one, or the one that is shown. */
  private LessonPlan base() {
    return lesson
        .chosen()
        .orElseGet(
            () -> {
              String word =
                  PlanName.named(shown).filter(PlanName::known).map(PlanName::word).orElse("free");
              return new LessonPlan(word, Optional.of(word), ImmutableListMultimap.of());
            });
  }

  /** The plan to change, under a name of its own. */
  private LessonPlan own() {
    LessonPlan base = base();
    if (!base.demands().isEmpty() || !LessonPlan.CHOICES.contains(base.name())) {
      return base;
    }
    String name =
        Stream.iterate(1, i -> i + 1)
            .map(i -> i == 1 ? text("plan.mine") : text("plan.mine-other", i))
            .filter(free -> lesson.plans().stream().noneMatch(plan -> plan.name().equals(free)))
            .findFirst()
            .orElseThrow();
    return new LessonPlan(name, base.choose(), base.demands());
  }

  /** The lesson with a demand on its chosen plan. */
  public Lesson demanding(String key, String value) {
    return tidy().choosing(own().with(ImmutableListMultimap.of(key, value)));
  }

  /** The lesson without a demand on its chosen plan. */
  public Lesson dropping(String key, String value) {
    return lesson.choosing(base().without((k, v) -> k.equals(key) && v.equals(value)));
  }

  /**
   * The lesson in which a note is played in a certain way.
   *
   * @param moment the index of the moment in the passage
   * @param ways the fingering of each note: {@code II/4@3}
   */
  public Lesson fixing(int moment, List<String> ways) {
    if (moment < 0 || moment >= passage.moments().size()) {
      throw new FingeringException(text("note.none"));
    }
    String beat = beat(passage, moment).orElseThrow(() -> unnamed(moment));
    ImmutableListMultimap.Builder<String, String> fixes = ImmutableListMultimap.builder();
    ways.forEach(way -> fixes.put(FIX, beat + "=" + way));
    return tidy()
        .choosing(own().without((key, value) -> isFix(key, value, moment)).with(fixes.build()));
  }

  /** The lesson in which the fingering of a note is free again. */
  public Lesson freeing(int moment) {
    return lesson.choosing(base().without((key, value) -> isFix(key, value, moment)));
  }

  /** The lesson without demands on notes and measures that lie within some measures. */
  public Lesson freeing(int first, int last) {
    return lesson.choosing(base().without((key, value) -> within(key, value, first, last)));
  }

  private boolean within(String key, String value, int first, int last) {
    if (key.equals(FIX)) {
      OptionalInt moment = fixed(passage, value);
      return moment.isPresent()
          && inside(passage.moments().get(moment.getAsInt()).place().measureIndex(), first, last);
    }
    return !key.equals("keep-plan")
        && NamedMeasures.of(value, passage)
            .filter(span -> inside(span.lowerEndpoint(), first, last))
            .filter(span -> inside(span.upperEndpoint(), first, last))
            .isPresent();
  }

  private static boolean inside(int measure, int first, int last) {
    return first <= measure && measure <= last;
  }

  private boolean isFix(String key, String value, int moment) {
    return key.equals(FIX) && fixed(passage, value).equals(OptionalInt.of(moment));
  }

  /** The moment that a demand fixes; empty if the passage does not have it. */
  public static OptionalInt fixed(Passage passage, String value) {
    try {
      return OptionalInt.of(
          MeasureBeat.parse(value.substring(0, value.indexOf('='))).indexIn(passage));
    } catch (FingeringException | StringIndexOutOfBoundsException e) {
      return OptionalInt.empty();
    }
  }

  /**
   * The measure and beat by which a lesson names a moment; empty if they name another one: a grace
   * note, or a note in the second of two measures with one number.
   */
  public static Optional<String> beat(Passage passage, int moment) {
    Place place = passage.moments().get(moment).place();
    BigDecimal beat =
        new BigDecimal(place.beat().doubleValue(), MathContext.DECIMAL64)
            .setScale(DECIMALS, RoundingMode.HALF_UP);
    try {
      String named = new MeasureBeat(place.measure(), beat).toString();
      return MeasureBeat.parse(named).indexIn(passage) == moment
          ? Optional.of(named)
          : Optional.empty();
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  private FingeringException unnamed(int moment) {
    return new FingeringException(
        passage.moments().get(moment).grace() ? text("note.grace") : text("note.twice"));
  }

  /**
   * Measures as a lesson names them.
   *
   * @throws FingeringException if their numbers name other measures
   */
  public static String span(Passage passage, int first, int last) {
    String from = number(passage, first);
    String to = number(passage, last);
    String span = from.equals(to) ? from : from + "-" + to;
    if (NamedMeasures.in(passage, span).equals(Optional.of(Range.closed(first, last)))) {
      return span;
    }
    throw new FingeringException(text("measures.twice"));
  }

  private static String number(Passage passage, int measure) {
    return passage
        .measure(measure)
        .map(Measure::number)
        .orElseThrow(() -> new FingeringException(text("measures.none")));
  }

  /**
   * The lesson with another plan as the chosen one.
   *
   * @param name the name of a plan of the lesson, or the word for a usual plan
   */
  public Lesson choosing(String name) {
    Optional<LessonPlan> own =
        lesson.plans().stream().filter(plan -> plan.name().equals(name)).findFirst();
    if (own.isPresent()) {
      return tidy().choosing(own.get());
    }
    if (!LessonPlan.CHOICES.contains(name)) {
      throw new FingeringException(text("plan.none"));
    }
    return tidy().choosing(new LessonPlan(name, Optional.of(name), ImmutableListMultimap.of()));
  }

  /** The lesson without the usual plans, which need not be kept. */
  private Lesson tidy() {
    return lesson.withPlans(
        lesson.plans().stream()
            .filter(
                plan ->
                    !plan.demands().isEmpty() || !plan.choose().equals(Optional.of(plan.name())))
            .collect(ImmutableList.toImmutableList()));
  }
}
