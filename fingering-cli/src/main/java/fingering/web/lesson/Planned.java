package fingering.web.lesson;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.lesson.PlanName;
import fingering.music.Passage;
import fingering.page.PageContent;
import fingering.page.music.Lanes;
import fingering.page.music.LineDrawer;
import fingering.page.music.MusicPanel;
import fingering.plan.Plan;
import fingering.practice.Circle;
import fingering.practice.CircleFinder;
import fingering.search.Cancellation;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The plans of an open lesson.
 *
 * @param setting what they depend on, apart from the demands of the chosen plan
 * @param advice makes the plans
 * @param wide draws the music for wide windows
 * @param narrow draws the music for narrow windows
 * @param chosen the chosen plan of the lesson; empty if none is chosen
 * @param below which plan the lesson names for below the staff
 * @param plan the plan that is shown: the chosen one, or else that of the verdict
 * @param rival the plan whose fingers stand below the staff where it differs; empty if none does
 */
public record Planned(
    Setting setting,
    Advice advice,
    Supplier<LineDrawer> wide,
    Supplier<LineDrawer> narrow,
    Optional<LessonPlan> chosen,
    Below below,
    Plan plan,
    Optional<Plan> rival) {

  /**
   * Which plan a lesson names for below the staff.
   *
   * @param name its name; empty if the verdict decides
   * @param plan the plan; empty if the lesson has none of that name
   */
  record Below(Optional<String> name, Optional<LessonPlan> plan) {
    static Below of(Lesson lesson) {
      return new Below(
          lesson.below(),
          lesson
              .below()
              .filter(name -> !name.equals(Lesson.NONE_BELOW))
              .flatMap(
                  name ->
                      lesson.plans().stream()
                          .filter(plan -> plan.name().equals(name))
                          .findFirst()
                          .or(() -> usual(name))));
    }

    private static Optional<LessonPlan> usual(String name) {
      return LessonPlan.CHOICES.contains(name)
          ? Optional.of(new LessonPlan(name, Optional.of(name), ImmutableListMultimap.of()))
          : Optional.empty();
    }

    boolean none() {
      return name.equals(Optional.of(Lesson.NONE_BELOW));
    }
  }

  /**
   * The plans of a lesson whose music and student are known.
   *
   * @param before earlier plans of the lesson, which may be of the same music
   */
  public static Planned of(
      Setting setting,
      Advice advice,
      Lesson lesson,
      Optional<Planned> before,
      Cancellation cancellation) {
    PageContent content = advice.content();
    Passage passage = content.comparison().passage();
    Optional<Planned> same =
        before
            .filter(planned -> planned.passage().equals(passage))
            .filter(planned -> planned.advice().content().printed().equals(content.printed()));
    Supplier<LineDrawer> wide =
        same.map(Planned::wide).orElseGet(() -> drawer(content, MusicPanel.WIDE));
    Supplier<LineDrawer> narrow =
        same.map(Planned::narrow).orElseGet(() -> drawer(content, MusicPanel.NARROW));
    Below automatic = new Below(Optional.empty(), Optional.empty());
    return new Planned(
            setting,
            advice,
            wide,
            narrow,
            Optional.empty(),
            automatic,
            content.main(),
            content.rival())
        .choosing(lesson, cancellation);
  }

  /** A drawer that lays the music out when it is first drawn. */
  private static Supplier<LineDrawer> drawer(PageContent content, double width) {
    return Suppliers.memoize(
        () -> new LineDrawer(content.comparison().passage(), content.printed(), width));
  }

  /** The same with the plans that a lesson chooses for above and below the staff. */
  public Planned choosing(Lesson lesson, Cancellation cancellation) {
    Optional<LessonPlan> wanted = lesson.chosen();
    Below wantedBelow = Below.of(lesson);
    boolean same = wanted.equals(chosen);
    if (same && wantedBelow.equals(below)) {
      return this;
    }
    PageContent content = advice.content();
    Plan shown = same ? plan : wanted.map(one -> made(one, cancellation)).orElseGet(content::main);
    Optional<Plan> other;
    if (wantedBelow.none()) {
      other = Optional.empty();
    } else if (wantedBelow.plan().isEmpty()) {
      other = shown.sameFingering(content.main()) ? content.rival() : Optional.of(content.main());
    } else if (wantedBelow.plan().equals(wanted)) {
      other = Optional.of(shown);
    } else {
      other =
          wantedBelow.equals(below)
              ? rival
              : Optional.of(made(wantedBelow.plan().get(), cancellation));
    }
    return new Planned(setting, advice, wide, narrow, wanted, wantedBelow, shown, other);
  }

  private Plan made(LessonPlan wanted, Cancellation cancellation) {
    return usual(wanted).orElseGet(() -> advice.plan(wanted, cancellation));
  }

  /** The plan if it is one of the usual ones, which are made already. */
  private Optional<Plan> usual(LessonPlan wanted) {
    return advice.content().comparison().plans().stream()
        .filter(plan -> wanted.demands().isEmpty())
        .filter(plan -> PlanName.named(plan).map(PlanName::word).equals(wanted.choose()))
        .map(
            plan ->
                LessonPlan.CHOICES.contains(wanted.name()) ? plan : plan.withName(wanted.name()))
        .findFirst();
  }

  /** The same plans of the same music from another file. */
  public Planned at(Setting newSetting) {
    return new Planned(newSetting, advice, wide, narrow, chosen, below, plan, rival);
  }

  public Passage passage() {
    return advice.content().comparison().passage();
  }

  /** Draws the music for wide or narrow windows. */
  public LineDrawer drawer(boolean narrowly) {
    return (narrowly ? narrow : wide).get();
  }

  /** What can be circled in the part. */
  public ImmutableList<Circle> circles() {
    return CircleFinder.of(plan, advice.content().printed());
  }

  public Lanes lanes() {
    return Lanes.of(plan, rival);
  }
}
