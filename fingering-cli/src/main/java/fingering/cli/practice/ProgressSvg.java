package fingering.cli.practice;

import fingering.cli.chart.SvgPage;
import fingering.cli.terminal.Dates;
import fingering.cli.text.TempoText;
import fingering.demand.MeasureSpan;
import fingering.music.BeatUnit;
import fingering.music.Tempo;
import fingering.practice.BeatConversion;
import fingering.practice.Journal;
import fingering.practice.JournalEntry;
import fingering.tables.FingeringException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The progress in a journal as a picture: a dot for each clean tempo, day by day. */
public final class ProgressSvg {
  /** The size of the picture, in millimetres. */
  public enum Size {
    /** For a picture by itself, as wide as a sheet of paper. */
    SHEET(180, 100),
    /** For a picture in a page, with text that is readable on a phone. */
    PAGE(96, 76);

    private final double width;
    private final double height;

    Size(double width, double height) {
      this.width = width;
      this.height = height;
    }
  }

  private static final double LEFT = 16;
  private static final double RIGHT = 6;
  private static final double TOP = 14;
  private static final double BOTTOM = 16;
  private static final double PIXELS = 4;
  private static final double SMALL = 3;

  /** The reason why there is no picture, without a full stop. */
  public static final String NO_CLEAN_TEMPO = "The journal has no clean tempo yet";

  private static final String INK = "#111";
  private static final String FAINT = "#ccc";
  private static final String PATH = "#0b5394";

  /** The width of a date. */
  private static final double DATE = 21;

  private static final double MINUTES_A_DAY = 24 * 60.0;

  private final double width;
  private final double height;
  private final Journal journal;
  private final List<JournalEntry> clean;
  private final Optional<Tempo> goal;
  private final BeatUnit unit;
  private final LocalDate first;
  private final long days;
  private final int lowest;
  private final int highest;
  private final SvgPage page = new SvgPage();

  private ProgressSvg(Journal journal, List<JournalEntry> clean, Optional<Tempo> goal, Size size) {
    width = size.width;
    height = size.height;
    this.journal = journal;
    this.clean = clean;
    unit =
        goal.map(Tempo::unit)
            .orElseGet(() -> clean.get(clean.size() - 1).clean().orElseThrow().unit());
    this.goal = goal;
    // The dates may be out of order after changes of the clock or edits by hand.
    first = dates().min(LocalDate::compareTo).orElseThrow();
    days = Math.max(1, ChronoUnit.DAYS.between(first, dates().max(LocalDate::compareTo).get()) + 1);
    double[] figures =
        Stream.concat(clean.stream().map(this::figure), this.goal.stream().map(ProgressSvg::value))
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    lowest = (int) Math.floor(figures[0] / 10) * 10;
    highest = Math.max(lowest + 10, (int) Math.ceil(figures[figures.length - 1] / 10) * 10);
  }

  /**
   * The picture.
   *
   * @param goal the tempo to reach
   * @throws FingeringException if the journal has no clean tempo
   */
  public static String of(Journal journal, Optional<Tempo> goal, Size size) {
    return drawn(journal, goal, size)
        .orElseThrow(
            () ->
                new FingeringException(
                    NO_CLEAN_TEMPO + ", so there is nothing to draw: add one with 'journal add'."));
  }

  /** The picture; empty if the journal has no clean tempo. */
  public static Optional<String> drawn(Journal journal, Optional<Tempo> goal, Size size) {
    List<JournalEntry> clean =
        journal.entries().stream().filter(entry -> entry.clean().isPresent()).toList();
    return clean.isEmpty()
        ? Optional.empty()
        : Optional.of(new ProgressSvg(journal, clean, goal, size).draw());
  }

  /** Whether the journal has a clean tempo to draw. */
  public static boolean drawable(Journal journal) {
    return journal.entries().stream().anyMatch(entry -> entry.clean().isPresent());
  }

  private Stream<LocalDate> dates() {
    return journal.entries().stream().map(entry -> entry.when().toLocalDate());
  }

  private Tempo inUnit(Tempo tempo) {
    return BeatConversion.in(tempo, unit);
  }

  private static double value(Tempo tempo) {
    return tempo.perMinute().doubleValue();
  }

  private double figure(JournalEntry entry) {
    return value(inUnit(entry.clean().orElseThrow()));
  }

  private double x(LocalDateTime when) {
    double at = ChronoUnit.MINUTES.between(first.atStartOfDay(), when) / MINUTES_A_DAY;
    return LEFT + (width - LEFT - RIGHT) * at / days;
  }

  private double y(double figure) {
    return TOP + (height - TOP - BOTTOM) * (highest - figure) / (highest - lowest);
  }

  private String draw() {
    grid();
    goal.ifPresent(
        tempo -> {
          page.line(LEFT, y(value(tempo)), width - RIGHT, y(value(tempo)), 0.5, INK);
          page.text(
              width - RIGHT,
              y(value(tempo)) - 2.5,
              SMALL,
              SvgPage.Anchor.END,
              false,
              "goal: " + TempoText.mark(tempo));
        });
    path();
    dots();
    page.text(2, 6, 4, SvgPage.Anchor.START, true, "Clean tempo, " + unit + " notes per minute");
    page.text(
        2,
        height - 3,
        SMALL,
        SvgPage.Anchor.START,
        false,
        "● whole passage   ○ some measures   × nothing clean");
    return page.document(width, height, PIXELS, "Progress", description());
  }

  private String description() {
    JournalEntry begin = clean.get(0);
    JournalEntry end = clean.get(clean.size() - 1);
    return "Clean tempi in %s notes per minute, from %s on %s to %s on %s."
        .formatted(
            unit,
            SvgPage.number(figure(begin)),
            Dates.full(begin.when().toLocalDate()),
            SvgPage.number(figure(end)),
            Dates.full(end.when().toLocalDate()));
  }

  private void grid() {
    int apart = Math.max(10, (highest - lowest) / 80 * 10);
    for (int figure = lowest; figure <= highest; figure += apart) {
      page.line(LEFT, y(figure), width - RIGHT, y(figure), 0.2, FAINT);
      page.text(LEFT - 2, y(figure), SMALL, SvgPage.Anchor.END, false, Integer.toString(figure));
    }
    long every = Math.max(1, (long) Math.ceil(days * DATE / (width - LEFT - RIGHT)));
    for (long day = 0; day < days; day += every) {
      LocalDate date = first.plusDays(day);
      double x = x(date.atStartOfDay());
      page.line(x, height - BOTTOM, x, height - BOTTOM + 1.5, 0.2, INK);
      if (x + DATE <= width) {
        page.text(x, height - BOTTOM + 4, SMALL, SvgPage.Anchor.START, false, Dates.brief(date));
      }
    }
  }

  private void path() {
    List<JournalEntry> whole =
        clean.stream().filter(entry -> entry.measures().equals(MeasureSpan.WHOLE)).toList();
    for (int i = 1; i < whole.size(); i++) {
      JournalEntry from = whole.get(i - 1);
      JournalEntry to = whole.get(i);
      page.line(x(from.when()), y(figure(from)), x(to.when()), y(figure(to)), 0.5, PATH);
    }
  }

  private void dots() {
    for (JournalEntry entry : journal.entries()) {
      double x = x(entry.when());
      if (entry.clean().isEmpty()) {
        page.text(x, height - BOTTOM - 2, SMALL + 1, SvgPage.Anchor.MIDDLE, true, "×");
      } else if (entry.measures().equals(MeasureSpan.WHOLE)) {
        page.circle(x, y(figure(entry)), 1.2, "fill=\"" + PATH + "\"");
      } else {
        page.circle(
            x, y(figure(entry)), 1, "fill=\"#fff\" stroke=\"" + PATH + "\" stroke-width=\"0.4\"");
      }
    }
  }
}
