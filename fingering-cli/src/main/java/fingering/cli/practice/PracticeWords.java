package fingering.cli.practice;

import com.google.common.collect.ImmutableList;
import fingering.cli.terminal.Dates;
import fingering.cli.text.HeadingText;
import fingering.cli.text.TempoText;
import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.page.view.Ladder;
import fingering.plan.PlanRemarks;
import fingering.practice.BeatConversion;
import fingering.practice.LadderRequest;
import fingering.practice.LimitLadder;
import fingering.practice.MetronomeScale;
import fingering.practice.PracticeDay;
import fingering.practice.PracticePlan;
import fingering.practice.TempoLadder;
import fingering.tempo.ComfortableTempo;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The practice of a plan in sentences and table cells, for text and for the HTML page. */
public final class PracticeWords {
  private final PracticePlan practice;
  private final boolean given;

  /**
   * Creates the texts of a practice plan.
   *
   * @param given whether the user gave the clean tempo, instead of the journal
   */
  public PracticeWords(PracticePlan practice, boolean given) {
    this.practice = practice;
    this.given = given;
  }

  private TempoLadder whole() {
    return practice.whole();
  }

  public String title() {
    return HeadingText.title(practice.plan().passage());
  }

  /** The goal and its date, whether it can be reached, and the hard measures. */
  public ImmutableList<String> about() {
    LadderRequest request = whole().request();
    ImmutableList.Builder<String> about = ImmutableList.builder();
    about.add(
        practice.plan().passage().instrument().name()
            + ", "
            + practice.plan().name()
            + ": from "
            + TempoText.mark(request.clean())
            + " to "
            + TempoText.mark(request.goal())
            + " by "
            + Dates.full(request.by())
            + ".");
    about.addAll(PlanRemarks.of(practice.plan()));
    about.add(reach());
    practice.waitsFor().ifPresent(spot -> about.add(waiting(spot)));
    if (practice.held()) {
      about.add(
          "The last day was a bad one, so the first day goes no faster than what was clean then.");
    }
    about.add(stepSizes());
    practice.limits().forEach(limit -> about.add(hard(limit)));
    return about.build();
  }

  private static String waiting(LimitLadder spot) {
    return "The whole passage waits for "
        + named(spot.measures())
        + ": it is never faster than the slowest spot.";
  }

  private static String hard(LimitLadder limit) {
    return limit
            .comfort()
            .map(
                comfort ->
                    "Hard "
                        + named(limit.measures())
                        + ": "
                        + limit.reason()
                        + "; comfortable up to "
                        + TempoText.mark(MetronomeScale.EXACT.atMost(comfort)))
            .orElseGet(
                () ->
                    capital(named(limit.measures()))
                        + ": not clean at the goal yet, by the journal; last clean at "
                        + TempoText.mark(limit.ladder().request().clean()))
        + ". Practise this separately first.";
  }

  private String reach() {
    LadderRequest request = whole().request();
    int above = request.clean().perMinute().compareTo(request.goal().perMinute());
    if (above == 0) {
      return "The goal is already clean: keep it that way.";
    }
    if (above > 0) {
      return "Your clean tempo is already faster than the goal: go no faster than the goal, and"
          + " keep it easy."
          + (given ? " Or did you swap --from and --to?" : "");
    }
    if (whole().reachesGoal()) {
      return "Small steps reach the goal in time.";
    }
    PracticeDay.Kind now = whole().days().get(0).kind();
    if (now == PracticeDay.Kind.EVE || now == PracticeDay.Kind.DAY) {
      return "Play it at "
          + TempoText.mark(whole().reachable())
          + ", "
          + clean()
          + ", and no faster.";
    }
    return "Small steps do not reach the goal in time, but they reach "
        + TempoText.mark(whole().reachable())
        + ". Play it cleanly at that tempo, or choose a later day. The steps do not get larger.";
  }

  private String stepSizes() {
    String settings =
        whole().size().metronome() == MetronomeScale.TRADITIONAL
            ? "The steps are the marks of a traditional (Maelzel) metronome. "
            : "";
    return settings + whole().size().comfort().map(this::limited).orElseGet(this::unlimited);
  }

  private String limited(Tempo comfort) {
    Tempo goal = whole().request().goal();
    if (ComfortableTempo.wellAbove(
        comfort.perMinute().doubleValue() / goal.perMinute().doubleValue())) {
      return unlimited();
    }
    Tempo smaller = atLeast(whole().size().smallerFrom().orElseThrow());
    String upTo =
        "The plan is comfortable up to "
            + TempoText.mark(MetronomeScale.EXACT.atMost(comfort))
            + " (level "
            + practice.level().name()
            + ")";
    if (smaller.perMinute().compareTo(goal.perMinute()) >= 0) {
      return upTo + ".";
    }
    boolean beyond = goal.perMinute().compareTo(comfort.perMinute()) > 0;
    return upTo
        + ": steps are halved from "
        + TempoText.mark(smaller)
        + ", and halved again above the comfortable tempo."
        + (beyond
            ? " The goal is faster than that: ask your teacher whether this plan is suitable."
            : "");
  }

  /** The journal is a better guide than a calculation to what is not yet easy. */
  private String unlimited() {
    String comfortable = "comfortable " + TempoText.wellAbove(whole().request().goal()) + ".";
    return practice.limits().isEmpty()
        ? "The plan is " + comfortable
        : "By calculation the plan is " + comfortable + " Trust the journal more.";
  }

  private static Tempo atLeast(Tempo tempo) {
    Tempo lower = MetronomeScale.EXACT.atMost(tempo);
    return lower.perMinute().compareTo(tempo.perMinute()) < 0
        ? MetronomeScale.EXACT.above(lower)
        : lower;
  }

  /** The date of the first day, as text. */
  public String day() {
    return Dates.full(whole().days().get(0).date());
  }

  /** The first day in one line: {@code start at quarter = 72, up to 80, in steps of 4; 3 spots}. */
  public String brief() {
    PracticeDay day = whole().days().get(0);
    if (day.kind() != PracticeDay.Kind.PRACTICE) {
      return String.join(" ", today());
    }
    int spots = practice.limits().size();
    return "Start at "
        + TempoText.mark(day.start())
        + ", up to "
        + figure(day.top())
        + stepSizes(day)
        + (spots == 0 ? "." : "; " + spots + (spots == 1 ? " spot alone." : " spots alone."));
  }

  private static String stepSizes(PracticeDay day) {
    List<BigDecimal> sizes =
        IntStream.range(1, day.steps().size())
            .mapToObj(
                i ->
                    day.steps()
                        .get(i)
                        .perMinute()
                        .subtract(day.steps().get(i - 1).perMinute())
                        .stripTrailingZeros())
            .sorted()
            .toList();
    if (sizes.isEmpty()) {
      return "";
    }
    String least = sizes.get(0).toPlainString();
    String most = sizes.get(sizes.size() - 1).toPlainString();
    return ", in steps of " + (least.equals(most) ? least : least + " to " + most);
  }

  /** What to do on the first day. */
  public ImmutableList<String> today() {
    PracticeDay day = whole().days().get(0);
    return switch (day.kind()) {
      case REST -> ImmutableList.of("Rest day. Do not play this piece.");
      case DAY ->
          ImmutableList.of(
              "The day itself. Play it once slowly at " + withClicks(day.start()) + ".",
              "Then rest until you perform it at " + withClicks(day.top()) + ".");
      case EVE ->
          ImmutableList.of(
              "Nothing new. Play it once slowly at " + withClicks(day.start()) + ".",
              "Play it once through at " + withClicks(day.top()) + ". Then rest.");
      case PRACTICE -> steps(day);
    };
  }

  private ImmutableList<String> steps(PracticeDay day) {
    ImmutableList.Builder<String> steps = ImmutableList.builder();
    for (LimitLadder limit : practice.limits()) {
      PracticeDay own = limit.ladder().days().get(0);
      steps.add(capital(named(limit.measures())) + " alone: " + climb(own) + ".");
    }
    steps.add("Whole passage: start at " + withClicks(day.start()) + ", " + below() + ".");
    steps.add("Go up: " + climb(day) + ".");
    steps.add(
        "Play each step twice without a mistake before the next. After a mistake, go back one"
            + " step.");
    if (day.runThroughs() > 0) {
      steps.add(
          "Finally, play it "
              + times(day.runThroughs())
              + " through at "
              + withClicks(day.top())
              + ".");
    }
    return steps.build();
  }

  /** The start of the first day, relative to the clean tempo or the goal. */
  private String below() {
    LadderRequest request = whole().request();
    boolean beyond = request.clean().perMinute().compareTo(request.goal().perMinute()) > 0;
    return TempoLadder.STEPS_BACK + " steps below " + (beyond ? "the goal" : clean());
  }

  /** What the clean tempo of the ladder is the clean tempo of. */
  private String clean() {
    return practice
        .waitsFor()
        .map(spot -> "the clean tempo of " + named(spot.measures()))
        .orElse("your clean tempo");
  }

  /** Whether the first day is a day of practice, with work on spots. */
  public boolean practised() {
    return whole().days().get(0).kind() == PracticeDay.Kind.PRACTICE;
  }

  /** The column heads of the ladder. */
  public ImmutableList<String> columns() {
    ImmutableList.Builder<String> heads = ImmutableList.builder();
    heads.add("day", "whole: start", "up to");
    practice.limits().forEach(limit -> heads.add(brief(limit.measures())));
    return heads.add("at full tempo").build();
  }

  /** The rows of the ladder, one for each day; a rest day has only two cells. */
  public ImmutableList<ImmutableList<String>> rows() {
    ImmutableList.Builder<ImmutableList<String>> rows = ImmutableList.builder();
    for (int i = 0; i < whole().days().size(); i++) {
      rows.add(row(i));
    }
    return rows.build();
  }

  private ImmutableList<String> row(int i) {
    PracticeDay day = whole().days().get(i);
    String date = Dates.brief(day.date());
    if (day.kind() == PracticeDay.Kind.REST) {
      return ImmutableList.of(date, "rest");
    }
    ImmutableList.Builder<String> cells = ImmutableList.builder();
    cells.add(date, figure(day.start()), figure(day.top()));
    for (LimitLadder limit : practice.limits()) {
      PracticeDay own = limit.ladder().days().get(i);
      cells.add(day.kind() == PracticeDay.Kind.PRACTICE ? figure(own.top()) : "–");
    }
    cells.add(
        switch (day.kind()) {
          case DAY -> "the day";
          case EVE -> "once only";
          default -> day.runThroughs() == 0 ? "–" : times(day.runThroughs());
        });
    return cells.build();
  }

  /** The ladder as a page shows it. */
  public Ladder ladder() {
    return new Ladder(columns(), rows(), figures());
  }

  /** The explanation of the numbers in the ladder. */
  public String figures() {
    Tempo planned = practice.plan().passage().tempo();
    boolean other = !planned.quartersPerMinute().equals(goal().quartersPerMinute());
    return "Numbers are "
        + goal().unit()
        + " notes per minute; 'up to' is the last step of the day."
        + (other
            ? " Seconds, and notes a second, are those at " + TempoText.mark(planned) + "."
            : "");
  }

  private Tempo goal() {
    return whole().request().goal();
  }

  static String climb(PracticeDay day) {
    return day.steps().stream().map(PracticeWords::figure).collect(Collectors.joining(" "));
  }

  static String times(int number) {
    return number == 1 ? "once" : number == 2 ? "twice" : number + " times";
  }

  static String named(MeasureSpan span) {
    return span.phrase().replaceFirst("^ in ", "").replace('-', '–');
  }

  private static String brief(MeasureSpan span) {
    return named(span).replaceFirst("measures? ", "m. ");
  }

  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String figure(Tempo tempo) {
    return tempo.perMinute().toPlainString();
  }

  /** The tempo, with the setting of the metronome if that is another note value. */
  private static String withClicks(Tempo tempo) {
    Tempo clicks = BeatConversion.clicks(tempo);
    return TempoText.mark(tempo)
        + (clicks.unit().equals(tempo.unit()) ? "" : " (clicks: " + TempoText.mark(clicks) + ")");
  }
}
