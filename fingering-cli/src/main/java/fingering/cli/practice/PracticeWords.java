package fingering.cli.practice;

import com.google.common.collect.ImmutableList;
import fingering.cli.terminal.Dates;
import fingering.cli.text.TempoText;
import fingering.demand.MeasureSpan;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.plan.PlanRemarks;
import fingering.practice.BeatConversion;
import fingering.practice.LadderRequest;
import fingering.practice.LimitLadder;
import fingering.practice.MetronomeScale;
import fingering.practice.PracticeDay;
import fingering.practice.PracticePlan;
import fingering.practice.TempoLadder;
import fingering.tempo.ComfortableTempo;
import java.util.Locale;
import java.util.stream.Collectors;

/** The practice of a plan in sentences and in the cells of a table, for text and for the page. */
public final class PracticeWords {
  private final PracticePlan practice;
  private final boolean given;

  /**
   * For text or page.
   *
   * @param given whether the tempo that is clean was typed, and not told by the journal
   */
  public PracticeWords(PracticePlan practice, boolean given) {
    this.practice = practice;
    this.given = given;
  }

  private TempoLadder whole() {
    return practice.whole();
  }

  public String title() {
    Passage passage = practice.plan().passage();
    return passage.title().isBlank() ? passage.partName() : passage.title();
  }

  /** What is practised until when, how far that is reachable, and what is hard in it. */
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
            + Dates.told(request.by())
            + ".");
    about.addAll(PlanRemarks.of(practice.plan()));
    about.add(reach(), shrinking());
    for (LimitLadder limit : practice.limits()) {
      about.add(
          "Hard "
              + named(limit.measures())
              + ": "
              + limit.reason()
              + "; comfortable up to "
              + TempoText.mark(MetronomeScale.EXACT.atMost(limit.comfort()))
              + ". Practise alone first.");
    }
    return about.build();
  }

  private String reach() {
    LadderRequest request = whole().request();
    int above = request.clean().perMinute().compareTo(request.goal().perMinute());
    if (above == 0) {
      return "The goal is clean already: keep it so.";
    }
    if (above > 0) {
      return "What is clean is quicker than the goal already: go no further than the goal, and keep"
          + " it easy."
          + (given
              ? " Were --from and --to meant the other way round? Then change them over."
              : "");
    }
    if (whole().reachesGoal()) {
      return "Small steps reach that in time.";
    }
    PracticeDay.Kind now = whole().days().get(0).kind();
    if (now == PracticeDay.Kind.EVE || now == PracticeDay.Kind.DAY) {
      return "Play it at "
          + TempoText.mark(whole().reachable())
          + ", which is clean. Nothing faster now.";
    }
    return "Small steps do not reach that by the day: "
        + TempoText.mark(whole().reachable())
        + " is reachable. Play it then, clean, or choose a later day. The steps do not grow.";
  }

  private String shrinking() {
    String settings =
        whole().size().metronome() == MetronomeScale.TRADITIONAL
            ? "Settings: the marks of the traditional pendulum metronome, Maelzel's. "
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
        + " on, and halved again above it."
        + (beyond ? " The goal lies above it: ask your teacher whether this plan suits." : "");
  }

  private String unlimited() {
    return "The plan is comfortable " + TempoText.wellAbove(whole().request().goal()) + ".";
  }

  private static Tempo atLeast(Tempo tempo) {
    Tempo lower = MetronomeScale.EXACT.atMost(tempo);
    return lower.perMinute().compareTo(tempo.perMinute()) < 0
        ? MetronomeScale.EXACT.above(lower)
        : lower;
  }

  /** The date of the first day. */
  public String day() {
    return Dates.told(whole().days().get(0).date());
  }

  /** What to do on the first day. */
  public ImmutableList<String> today() {
    PracticeDay day = whole().days().get(0);
    return switch (day.kind()) {
      case REST -> ImmutableList.of("A day of rest. Do not play it.");
      case DAY ->
          ImmutableList.of(
              "The day itself. Once slowly at " + set(day.start()) + ".",
              "Then no more until you play it: " + set(day.top()) + ".");
      case EVE ->
          ImmutableList.of(
              "Nothing new. Once slowly at " + set(day.start()) + ".",
              "Once through at " + set(day.top()) + ". Then rest.");
      case PRACTICE -> steps(day);
    };
  }

  private ImmutableList<String> steps(PracticeDay day) {
    ImmutableList.Builder<String> steps = ImmutableList.builder();
    for (LimitLadder limit : practice.limits()) {
      PracticeDay own = limit.ladder().days().get(0);
      steps.add(capital(named(limit.measures())) + " alone: " + climb(own) + ".");
    }
    steps.add("The whole: start at " + set(day.start()) + ", " + below() + ".");
    steps.add("Go up: " + climb(day) + ".");
    steps.add("Each step twice without a slip before the next. Slips? One step back.");
    if (day.runThroughs() > 0) {
      steps.add("Last " + times(day.runThroughs()) + " through at " + set(day.top()) + ".");
    }
    return steps.build();
  }

  /** Why the first day begins where it does. */
  private String below() {
    LadderRequest request = whole().request();
    boolean beyond = request.clean().perMinute().compareTo(request.goal().perMinute()) > 0;
    return TempoLadder.STEPS_BACK + " steps below " + (beyond ? "the goal" : "what is clean");
  }

  /** Whether the first day is one on which spots are worked on. */
  public boolean practised() {
    return whole().days().get(0).kind() == PracticeDay.Kind.PRACTICE;
  }

  /** The heads of the columns of the ladder, that of the days first. */
  public ImmutableList<String> columns() {
    ImmutableList.Builder<String> heads = ImmutableList.builder();
    heads.add("day", "whole: start", "up to");
    practice.limits().forEach(limit -> heads.add(brief(limit.measures())));
    return heads.add("at full tempo").build();
  }

  /** The days of the ladder; that of a day of rest has two cells only. */
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
          case EVE -> "once, no more";
          default -> day.runThroughs() == 0 ? "–" : times(day.runThroughs());
        });
    return cells.build();
  }

  /** What the figures of the ladder mean. */
  public String figures() {
    return "Figures are beats a minute, "
        + whole().request().goal().unit()
        + " notes; 'up to' is the last step of the day.";
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

  /** With what the metronome is best set to, where that is another value. */
  private static String set(Tempo tempo) {
    Tempo clicks = BeatConversion.clicks(tempo);
    return TempoText.mark(tempo)
        + (clicks.unit().equals(tempo.unit()) ? "" : " (clicks: " + TempoText.mark(clicks) + ")");
  }
}
