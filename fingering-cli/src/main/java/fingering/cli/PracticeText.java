package fingering.cli;

import fingering.demand.Span;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.practice.Beats;
import fingering.practice.Journal;
import fingering.practice.LadderRequest;
import fingering.practice.LimitLadder;
import fingering.practice.Metronome;
import fingering.practice.PracticeDay;
import fingering.practice.PracticePlan;
import fingering.practice.TempoLadder;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The practice of a plan in words: what to do today, and the days after it. */
final class PracticeText {
  /** What is said below every ladder. */
  static final String CARE =
      "Raise the tempo only while it stays easy. Long practice and quick tempi can hurt: rest"
          + " ten minutes in every hour, stop on pain, and ask your teacher or a clinician. Your"
          + " teacher has the last word.";

  private static final String UNLIMITED = "The plan is comfortable well above that.";
  private static final int DAY = 12;

  private final PracticePlan practice;
  private final int columns;
  private final Style style;
  private final StringBuilder text = new StringBuilder();

  private PracticeText(PracticePlan practice, int columns, Style style) {
    this.practice = practice;
    this.columns = columns;
    this.style = style;
  }

  static String of(
      PracticePlan practice, Journal journal, List<String> spots, int columns, Style style) {
    PracticeText page = new PracticeText(practice, columns, style);
    page.head();
    page.paragraphs(JournalText.problems(journal));
    page.today();
    if (practice.whole().days().get(0).kind() == PracticeDay.Kind.PRACTICE) {
      spots.forEach(page::line);
    }
    page.days();
    page.line("");
    page.paragraph(CARE);
    return page.text.toString();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void paragraph(String paragraph) {
    TextLayout.wrap(paragraph, columns, 2).forEach(this::line);
  }

  private void paragraphs(List<String> paragraphs) {
    paragraphs.forEach(this::paragraph);
    if (!paragraphs.isEmpty()) {
      line("");
    }
  }

  private TempoLadder whole() {
    return practice.whole();
  }

  private void head() {
    Passage passage = practice.plan().passage();
    LadderRequest request = whole().request();
    line(style.bold(passage.title().isBlank() ? passage.partName() : passage.title()));
    paragraph(
        passage.instrument().name()
            + ", "
            + practice.plan().name()
            + ": from "
            + mark(request.clean())
            + " to "
            + mark(request.goal())
            + " by "
            + Dates.told(request.by())
            + ".");
    paragraph(reach());
    paragraph(shrinking());
    for (LimitLadder limit : practice.limits()) {
      paragraph(
          "Hard "
              + named(limit.measures())
              + ": "
              + limit.says()
              + "; comfortable up to "
              + mark(Metronome.EXACT.atMost(limit.comfort()))
              + ". Practise alone first.");
    }
    line("");
  }

  private String reach() {
    if (whole().reachesGoal()) {
      return "Small steps reach that in time.";
    }
    PracticeDay.Kind now = whole().days().get(0).kind();
    if (now == PracticeDay.Kind.EVE || now == PracticeDay.Kind.DAY) {
      return "Play it at " + mark(whole().reachable()) + ", which is clean. Nothing faster now.";
    }
    return "Small steps do not reach that by the day: "
        + mark(whole().reachable())
        + " is reachable. Play it then, clean, or choose a later day. The steps do not grow.";
  }

  private String shrinking() {
    String settings =
        whole().size().metronome() == Metronome.TRADITIONAL
            ? "Settings: the marks of the traditional pendulum metronome, Maelzel's. "
            : "";
    return settings + whole().size().comfort().map(this::limited).orElse(UNLIMITED);
  }

  private String limited(Tempo comfort) {
    Tempo goal = whole().request().goal();
    Tempo smaller = atLeast(whole().size().smallerFrom().orElseThrow());
    if (smaller.perMinute().compareTo(goal.perMinute()) >= 0) {
      return UNLIMITED;
    }
    boolean beyond = goal.perMinute().compareTo(comfort.perMinute()) > 0;
    return "The plan is comfortable up to "
        + mark(Metronome.EXACT.atMost(comfort))
        + " (level "
        + practice.level().name()
        + "): steps are halved from "
        + mark(smaller)
        + " on, and halved again above it."
        + (beyond ? " The goal lies above it: ask your teacher whether this plan suits." : "");
  }

  private static Tempo atLeast(Tempo tempo) {
    Tempo lower = Metronome.EXACT.atMost(tempo);
    return lower.perMinute().compareTo(tempo.perMinute()) < 0
        ? Metronome.EXACT.above(lower)
        : lower;
  }

  private void today() {
    PracticeDay day = whole().days().get(0);
    line(style.bold(Dates.told(day.date())));
    switch (day.kind()) {
      case REST -> paragraph("- A day of rest. Do not play it.");
      case DAY -> {
        paragraph("- The day itself. Once slowly at " + set(day.start()) + ".");
        paragraph("- Then no more until you play it: " + set(day.top()) + ".");
      }
      case EVE -> {
        paragraph("- Nothing new. Once slowly at " + set(day.start()) + ".");
        paragraph("- Once through at " + set(day.top()) + ". Then rest.");
      }
      case PRACTICE -> {
        for (LimitLadder limit : practice.limits()) {
          PracticeDay own = limit.ladder().days().get(0);
          paragraph("- " + capital(named(limit.measures())) + " alone: " + climb(own) + ".");
        }
        paragraph("- The whole: start at " + set(day.start()) + ".");
        paragraph("- Go up: " + climb(day) + ".");
        paragraph("- Each step twice without a slip before the next. Slips? One step back.");
        if (day.full() > 0) {
          paragraph("- Last " + times(day.full()) + " through at " + set(day.top()) + ".");
        }
      }
    }
    line("");
  }

  private void days() {
    List<String> heads = new ArrayList<>(List.of("whole: start", "up to"));
    practice.limits().forEach(limit -> heads.add(brief(limit.measures())));
    heads.add("at full tempo");
    StringBuilder head = new StringBuilder(TextLayout.pad("day", DAY));
    heads.forEach(each -> head.append(TextLayout.padLeft(each, width(each))));
    line(style.bold(head.toString()));
    for (int i = 0; i < whole().days().size(); i++) {
      line(row(i, heads));
    }
    line("");
    paragraph(
        "Figures are beats a minute, "
            + whole().request().goal().unit()
            + " notes; 'up to' is the last step of the day.");
  }

  private String row(int i, List<String> heads) {
    PracticeDay day = whole().days().get(i);
    StringBuilder row = new StringBuilder(TextLayout.pad(Dates.brief(day.date()), DAY));
    if (day.kind() == PracticeDay.Kind.REST) {
      return row.append(TextLayout.padLeft("rest", width(heads.get(0)))).toString();
    }
    List<String> cells = new ArrayList<>(List.of(figure(day.start()), figure(day.top())));
    for (LimitLadder limit : practice.limits()) {
      PracticeDay own = limit.ladder().days().get(i);
      cells.add(day.kind() == PracticeDay.Kind.PRACTICE ? figure(own.top()) : "–");
    }
    cells.add(
        switch (day.kind()) {
          case DAY -> "the day";
          case EVE -> "once, no more";
          default -> day.full() == 0 ? "–" : times(day.full());
        });
    for (int c = 0; c < cells.size(); c++) {
      row.append(TextLayout.padLeft(cells.get(c), width(heads.get(c))));
    }
    return row.toString();
  }

  private static int width(String head) {
    return Math.max(head.length(), 6) + 2;
  }

  static String climb(PracticeDay day) {
    return day.steps().stream().map(PracticeText::figure).collect(Collectors.joining(" "));
  }

  static String times(int number) {
    return number == 1 ? "once" : number == 2 ? "twice" : number + " times";
  }

  static String named(Span span) {
    return span.told().replaceFirst("^ in ", "").replace('-', '–');
  }

  private static String brief(Span span) {
    return named(span).replaceFirst("measures? ", "m. ");
  }

  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String figure(Tempo tempo) {
    return tempo.perMinute().stripTrailingZeros().toPlainString();
  }

  static String mark(Tempo tempo) {
    return tempo.toString().replace("=", " = ");
  }

  /** With what the metronome is best set to, where that is another value. */
  private static String set(Tempo tempo) {
    Tempo clicks = Beats.clicks(tempo);
    return mark(tempo)
        + (clicks.unit().equals(tempo.unit()) ? "" : " (clicks: " + mark(clicks) + ")");
  }
}
