package fingering.cli.advice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import fingering.cli.option.LadderOptions;
import fingering.cli.practice.JournalText;
import fingering.cli.practice.PracticeText;
import fingering.cli.practice.PracticeWords;
import fingering.cli.practice.ProgressSvg;
import fingering.cli.practice.SpotsText;
import fingering.cli.terminal.Dates;
import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.page.live.PracticeNow;
import fingering.page.live.PracticeNow.Choice;
import fingering.page.live.PracticeNow.Line;
import fingering.page.view.Ladder;
import fingering.plan.Plan;
import fingering.practice.Journal;
import fingering.practice.LimitLadder;
import fingering.practice.PracticeDay;
import fingering.practice.PracticePlan;
import fingering.practice.PracticeSpots;
import fingering.tables.FingeringException;
import fingering.tempo.PlayerSpeed;
import java.time.LocalDate;
import java.util.Optional;

/** The practice of a plan, as 'practice --lesson' shows it. */
final class LessonPractice {
  /** The lines of the journal that are shown. */
  private static final int LINES = 10;

  private LessonPractice() {}

  /**
   * The practice of a plan.
   *
   * @param ladder the hearing and the journal of the lesson
   * @param today the day
   */
  static PracticeNow of(Plan plan, PlayerSpeed level, LadderOptions ladder, LocalDate today) {
    Journal journal = ladder.entries();
    String missing = missing(ladder, journal);
    if (!missing.isEmpty()) {
      return without(missing, plan, level, ladder, journal);
    }
    try {
      return planned(plan, level, ladder, journal, today);
    } catch (FingeringException e) {
      return without(String.valueOf(e.getMessage()), plan, level, ladder, journal);
    }
  }

  /** What must be known before a ladder can be planned. */
  private static String missing(LadderOptions ladder, Journal journal) {
    if (ladder.goal().isEmpty() || ladder.day().isEmpty()) {
      return ladder.goal().isEmpty() && ladder.day().isEmpty()
          ? "Fill in the hearing, its date and its tempo, to see a tempo ladder up to that day."
          : ladder.day().isEmpty()
              ? "Fill in the date of the hearing, to see a tempo ladder up to that day."
              : "Fill in the tempo at the hearing, to see a tempo ladder up to it.";
    }
    return journal.lastClean(MeasureSpan.WHOLE).isEmpty()
        ? "Play it once, and press 'Clean at' with the fastest tempo that was clean: the ladder begins there."
        : "";
  }

  private static PracticeNow planned(
      Plan plan, PlayerSpeed level, LadderOptions ladder, Journal journal, LocalDate today) {
    PracticePlan practice = PracticePlan.of(plan, level, ladder.request(), journal);
    PracticeWords words = new PracticeWords(practice, false);
    PracticeDay first = practice.whole().days().get(0);
    return now(
        words.about(),
        Dates.full(first.date()),
        first.date().equals(today),
        words.brief(),
        first.kind() == PracticeDay.Kind.PRACTICE ? words.today() : ImmutableList.of(),
        first.steps().isEmpty() ? "" : first.top().toString().replace("=", " = "),
        Optional.of(words.ladder()),
        "",
        practice.limits().stream()
            .map(LimitLadder::measures)
            .map(LessonPractice::choice)
            .collect(ImmutableList.toImmutableList()),
        plan,
        level,
        ladder,
        journal);
  }

  private static Choice choice(MeasureSpan span) {
    MeasureSpan.Ends ends = span.ends().orElseThrow();
    String value =
        ends.first().equals(ends.last()) ? ends.first() : ends.first() + "-" + ends.last();
    return new Choice(value, span.phrase().replaceFirst("^ in ", "").replace('-', '–'));
  }

  private static PracticeNow without(
      String missing, Plan plan, PlayerSpeed level, LadderOptions ladder, Journal journal) {
    String clean =
        journal
            .lastClean(MeasureSpan.WHOLE)
            .map(Tempo::toString)
            .map(mark -> mark.replace("=", " = "))
            .orElse("");
    return now(
        ImmutableList.of(),
        "",
        false,
        "",
        ImmutableList.of(),
        clean,
        Optional.empty(),
        missing,
        ImmutableList.of(),
        plan,
        level,
        ladder,
        journal);
  }

  private static PracticeNow now(
      ImmutableList<String> about,
      String day,
      boolean today,
      String brief,
      ImmutableList<String> steps,
      String top,
      Optional<Ladder> days,
      String missing,
      ImmutableList<Choice> measures,
      Plan plan,
      PlayerSpeed level,
      LadderOptions ladder,
      Journal journal) {
    return new PracticeNow(
        about,
        day,
        today,
        brief,
        steps,
        top,
        days,
        missing,
        SpotsText.onPage(PracticeSpots.of(plan, level), Optional.empty()),
        measures,
        ProgressSvg.drawn(journal, ladder.goal(), ProgressSvg.Size.PAGE),
        Lists.reverse(journal.entries()).stream()
            .limit(LINES)
            .map(entry -> new Line(JournalText.when(entry), JournalText.clean(entry), entry.note()))
            .collect(ImmutableList.toImmutableList()),
        ImmutableList.copyOf(JournalText.problems(journal)),
        PracticeText.CARE);
  }
}
