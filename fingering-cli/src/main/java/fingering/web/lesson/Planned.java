package fingering.web.lesson;

import com.google.common.collect.ImmutableList;
import fingering.engraving.drawing.Circled;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.lesson.PlanName;
import fingering.music.Passage;
import fingering.page.PageContent;
import fingering.page.live.MusicLine;
import fingering.page.music.Lanes;
import fingering.page.music.LineDrawer;
import fingering.page.music.MusicPanel;
import fingering.plan.Plan;
import fingering.practice.Circle;
import fingering.practice.CircleFinder;
import fingering.search.Cancellation;
import java.util.Optional;

/**
 * The plans of an open lesson.
 *
 * @param setting what they depend on, apart from the demands of the chosen plan
 * @param advice makes the plans
 * @param wide draws the music for wide windows
 * @param narrow draws the music for narrow windows
 * @param chosen the chosen plan of the lesson; empty if none is chosen
 * @param plan the plan that is shown: the chosen one, or else that of the verdict
 * @param rival the plan whose fingers stand below the staff where it differs; empty if none does
 */
public record Planned(
    Setting setting,
    Advice advice,
    LineDrawer wide,
    LineDrawer narrow,
    Optional<LessonPlan> chosen,
    Plan plan,
    Optional<Plan> rival) {

  /** The plans of a lesson whose music and student are known. */
  public static Planned of(
      Setting setting, Advice advice, Lesson lesson, Cancellation cancellation) {
    PageContent content = advice.content();
    Passage passage = content.comparison().passage();
    LineDrawer wide = new LineDrawer(passage, content.printed(), MusicPanel.WIDE);
    LineDrawer narrow = new LineDrawer(passage, content.printed(), MusicPanel.NARROW);
    return new Planned(
            setting, advice, wide, narrow, Optional.empty(), content.main(), content.rival())
        .choosing(lesson.chosen(), cancellation);
  }

  /** The same with another chosen plan. */
  public Planned choosing(Optional<LessonPlan> wanted, Cancellation cancellation) {
    if (wanted.equals(chosen)) {
      return this;
    }
    PageContent content = advice.content();
    Plan shown =
        wanted
            .map(one -> usual(one).orElseGet(() -> advice.plan(one, cancellation)))
            .orElseGet(content::main);
    Optional<Plan> other =
        shown.sameFingering(content.main()) ? content.rival() : Optional.of(content.main());
    return new Planned(setting, advice, wide, narrow, wanted, shown, other);
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
    return new Planned(newSetting, advice, wide, narrow, chosen, plan, rival);
  }

  public Passage passage() {
    return advice.content().comparison().passage();
  }

  /** The lines of the music with the fingers of the plans. */
  public ImmutableList<MusicLine> lines(boolean narrowly, ImmutableList<Circled> circles) {
    return (narrowly ? narrow : wide).draw(lanes(), circles);
  }

  /** What can be circled in the part. */
  public ImmutableList<Circle> circles() {
    return CircleFinder.of(plan, advice.content().printed());
  }

  public Lanes lanes() {
    return Lanes.of(plan, rival);
  }
}
