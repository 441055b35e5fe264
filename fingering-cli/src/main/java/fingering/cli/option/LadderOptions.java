package fingering.cli.option;

import com.google.common.collect.ImmutableSet;
import fingering.lesson.Hearing;
import fingering.lesson.LessonLadder;
import fingering.lesson.StoredLesson;
import fingering.music.Tempo;
import fingering.practice.Journal;
import fingering.practice.JournalFile;
import fingering.practice.MetronomeScale;
import fingering.practice.PracticePlan;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The goal, the days and the steps of a tempo ladder. */
public final class LadderOptions {
  @Option(
      names = "--from",
      paramLabel = "MARK",
      converter = Converters.TempoConverter.class,
      description =
          "The tempo that is clean now, such as quarter=72. A clean tempo in the journal overrides"
              + " it.")
  Optional<Tempo> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "MARK",
      converter = Converters.TempoConverter.class,
      description = "The opening tempo at the performance, unless a lesson names it.")
  Optional<Tempo> to = Optional.empty();

  @Option(
      names = "--by",
      paramLabel = "DATE",
      converter = Converters.DateConverter.class,
      description = "The day of the performance, 2026-12-12, unless a lesson names it.")
  Optional<LocalDate> by = Optional.empty();

  @Option(
      names = "--today",
      paramLabel = "DATE",
      converter = Converters.DateConverter.class,
      description = "The first day of the plan. Default: today.")
  Optional<LocalDate> today = Optional.empty();

  @Option(
      names = "--rest-days",
      paramLabel = "DAYS",
      split = ",",
      converter = Converters.WeekdayConverter.class,
      description = "Days of the week without practice: sun, or sat,sun.")
  List<DayOfWeek> rest = List.of();

  @Option(
      names = "--metronome",
      paramLabel = "KIND",
      description =
          "exact (the default): every whole number; traditional: the marks of a pendulum"
              + " metronome.")
  Optional<MetronomeScale> metronome = Optional.empty();

  @Option(
      names = "--journal",
      paramLabel = "FILE",
      description = "The journal with your clean tempi; see 'fingering journal --help'.")
  Optional<Path> journal = Optional.empty();

  private final Clock clock = Clock.system(ZoneId.systemDefault());

  /** Takes from a lesson what is not typed. */
  public void from(StoredLesson lesson) {
    to = to.or(() -> lesson.lesson().hearing().flatMap(Hearing::tempo));
    by = by.or(() -> lesson.lesson().hearing().flatMap(Hearing::date));
    journal = journal.or(lesson::journalFile);
    LessonLadder ladder = lesson.lesson().ladder();
    rest = rest.isEmpty() ? ladder.restDays().asList() : rest;
    metronome = metronome.or(() -> Optional.of(ladder.metronome()));
  }

  /** Takes a day as today, unless one is typed. */
  public void on(LocalDate day) {
    today = today.or(() -> Optional.of(day));
  }

  /** The tempo at the performance; empty if it is not known. */
  public Optional<Tempo> goal() {
    return to;
  }

  /** The day of the performance; empty if it is not known. */
  public Optional<LocalDate> day() {
    return by;
  }

  /** The days without practice, and the settings of the metronome. */
  public LessonLadder habits() {
    return new LessonLadder(ImmutableSet.copyOf(rest), metronome.orElse(MetronomeScale.EXACT));
  }

  /** The tempo that is typed as clean; empty if none is. */
  public Optional<Tempo> clean() {
    return from;
  }

  /** The file of the journal; empty if none is named. */
  public Optional<Path> journalFile() {
    return journal;
  }

  /** What the journal says; nothing if none is named. */
  public Journal entries() {
    return journal.map(path -> new JournalFile(path).read()).orElse(Journal.EMPTY);
  }

  /** What to plan, once goal and day are known. */
  public PracticePlan.Request request() {
    return new PracticePlan.Request(
        from,
        to.orElseThrow(),
        today.orElseGet(() -> LocalDate.now(clock)),
        by.orElseThrow(),
        habits().restDays(),
        habits().metronome());
  }
}
