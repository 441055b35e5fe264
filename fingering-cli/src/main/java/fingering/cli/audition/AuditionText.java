package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.MarginalCost;
import fingering.audition.RequiredSkill;
import fingering.cli.option.DetailOptions;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.cli.text.DetailsText;
import fingering.tempo.ComfortableTempo;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An audition sheet with its plans as text, for the student and the teacher: whether everything is
 * shown, what is required, a line or two for each piece, and the command to type next.
 */
public final class AuditionText {
  static final String CARE =
      "High positions, stretching and long practice can cause pain: stop if it hurts, rest, and ask"
          + " your teacher or a clinician. Your teacher has the last word on every fingering.";

  /** The widths of the columns at the right: two amounts, and the numbers of pieces. */
  private static final ImmutableList<Integer> CELLS = ImmutableList.of(12, 13, 11);

  private static final int INDENT = 3;
  private static final int OFFERS = 3;

  private final PlannedSheet sheet;
  private final ScoringContext scoring;
  private final DetailOptions detail;
  private final int columns;
  private final TextStyle style;
  private final StringBuilder text = new StringBuilder();

  private AuditionText(
      PlannedSheet sheet,
      ScoringContext scoring,
      DetailOptions detail,
      int columns,
      TextStyle style) {
    this.sheet = sheet;
    this.scoring = scoring;
    this.detail = detail;
    this.columns = columns;
    this.style = style;
  }

  /**
   * Returns the text.
   *
   * @param next the lines of the command to type next; may be empty
   */
  public static String of(
      PlannedSheet sheet,
      ScoringContext scoring,
      DetailOptions detail,
      List<String> next,
      int columns,
      TextStyle style) {
    AuditionText page = new AuditionText(sheet, scoring, detail, columns, style);
    page.heading();
    page.requirements();
    if (detail.costs) {
      page.offers();
      page.cost();
    }
    page.pieces();
    page.problems();
    page.next(next);
    page.care();
    return page.text.toString();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  /** Adds a paragraph that is indented; its further lines are indented by two more columns. */
  private void paragraph(String paragraph, int indent) {
    TextLayout.wrap(paragraph, columns - indent, 2)
        .forEach(line -> line(" ".repeat(indent) + line));
  }

  /**
   * Adds a row: text at the left, wrapped if it is long, and cells at the right of its last line.
   */
  private void row(String label, int indent, List<String> cells, List<Integer> widths) {
    int width = columns - widths.stream().mapToInt(Integer::intValue).sum() - indent;
    ImmutableList<String> lines = ImmutableList.copyOf(TextLayout.wrap(label, width - 1, 2));
    int last = lines.size() - 1;
    lines.subList(0, last).forEach(line -> line(" ".repeat(indent) + line));
    StringBuilder row = new StringBuilder(TextLayout.pad(lines.get(last), width));
    for (int i = 0; i < widths.size(); i++) {
      row.append(TextLayout.padLeft(cells.get(i), widths.get(i)));
    }
    line(" ".repeat(indent) + row);
  }

  private void heading() {
    paragraph(title(sheet), 0);
    TextLayout.wrap(String.join(" ", AuditionVerdict.of(sheet)), columns, 0)
        .forEach(one -> line(style.bold(one)));
    paragraph(scoring.line(), 0);
    line("");
  }

  /** The title and the instrument. */
  static String title(PlannedSheet sheet) {
    return sheet.sheet().title() + ": " + sheet.instrument().nameInSentence();
  }

  static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private void requirements() {
    if (sheet.audition().skills().isEmpty()) {
      return;
    }
    AskedTable table = new AskedTable(sheet);
    List<String> head = table.head();
    row(head.get(0), 0, head.subList(1, head.size()), CELLS);
    for (List<String> cells : table.rows()) {
      row(cells.get(0), 2, cells.subList(1, cells.size()), CELLS);
    }
    line("");
  }

  private void offers() {
    List<RequiredSkill> unmet =
        sheet.audition().skills().stream().filter(skill -> !skill.metByCheapest()).toList();
    if (unmet.isEmpty()) {
      return;
    }
    row("Where each could be shown alone", 0, List.of("extra points"), List.of(16));
    for (RequiredSkill skill : unmet) {
      paragraph(SkillWords.withAmount(skill.skill()) + withoutOffers(skill), 2);
      skill.marginalCosts().stream().limit(OFFERS).forEach(offer -> offer(skill, offer));
      int more = skill.marginalCosts().size() - OFFERS;
      if (more > 0) {
        paragraph("and in " + count(more, "other piece") + " at higher cost", 4);
      }
    }
    line("");
  }

  /** The remark on a skill that no single piece can show; empty for other skills. */
  private static String withoutOffers(RequiredSkill skill) {
    return !skill.marginalCosts().isEmpty()
        ? ""
        : skill.met() ? ": not in any single piece" : ": not in these pieces";
  }

  private void offer(RequiredSkill skill, MarginalCost offer) {
    row(
        sheet.title(offer.piece())
            + ", "
            + SkillWords.measures(offer.plan(), skill.skill(), offer.amount()),
        4,
        List.of(Long.toString(offer.extraCost())),
        List.of(16));
  }

  private void cost() {
    if (!sheet.audition().skills().isEmpty()) {
      paragraph(
          "All plans together cost %s more than the easiest ones, the least possible."
              .formatted(count(sheet.audition().extraCost(), "point")),
          0);
      line("");
    }
  }

  private void pieces() {
    boolean spaced = detail.costs || detail.notes;
    for (int i = 0; i < sheet.ready().size(); i++) {
      AuditionPieceText piece = new AuditionPieceText(sheet, scoring, i);
      List<String> lines = TextLayout.wrap(piece.line(), columns, INDENT);
      lines.forEach(one -> line(spaced ? style.bold(one) : one));
      if (detail.costs) {
        piece.shown().forEach(one -> paragraph(one, INDENT));
        paragraph(piece.cost(), INDENT);
      }
      piece.remarks().forEach(one -> paragraph(one, INDENT));
      if (spaced) {
        line("");
        text.append(DetailsText.of(sheet.alone(i), scoring, detail, columns, style));
      }
    }
    if (!spaced) {
      line("");
    }
  }

  private void problems() {
    if (sheet.problems().isEmpty()) {
      return;
    }
    line(style.bold("Not planned"));
    sheet.problemLines().forEach(one -> paragraph(one, 2));
    line("");
  }

  private void next(List<String> lines) {
    if (!lines.isEmpty()) {
      line(style.bold("Next"));
      lines.forEach(one -> line("  " + one));
      line("");
    }
  }

  private void care() {
    care(sheet, scoring).forEach(one -> paragraph(one, 0));
  }

  /** The warnings about tempo and strain. */
  static ImmutableList<String> care(PlannedSheet sheet, ScoringContext scoring) {
    boolean exceeded =
        IntStream.range(0, sheet.ready().size())
            .mapToObj(i -> ComfortableTempo.of(sheet.planned(i).plan(), scoring.level()))
            .anyMatch(ComfortableTempo::exceeded);
    return exceeded
        ? ImmutableList.of(
            "Some tempi are faster than comfortable: raise the tempo in small steps.", CARE)
        : ImmutableList.of(CARE);
  }
}
