package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.MarginalCost;
import fingering.audition.RequiredSkill;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.cli.text.TempoText;
import fingering.tempo.ComfortableTempo;
import java.util.List;
import java.util.stream.IntStream;

/** An audition sheet with its plans as text, for the teacher and for the student. */
public final class AuditionText {
  private static final String CARE =
      "High positions, stretching and long practice can cause pain: stop if it hurts, rest, and ask"
          + " your teacher or a clinician. Your teacher has the last word on every fingering.";

  private static final int CELL = 16;
  private static final int OFFERS = 3;

  private final PlannedSheet sheet;
  private final ScoringContext scoring;
  private final int columns;
  private final TextStyle style;
  private final StringBuilder text = new StringBuilder();

  private AuditionText(PlannedSheet sheet, ScoringContext scoring, int columns, TextStyle style) {
    this.sheet = sheet;
    this.scoring = scoring;
    this.columns = columns;
    this.style = style;
  }

  public static String of(
      PlannedSheet sheet, ScoringContext scoring, int columns, TextStyle style) {
    AuditionText page = new AuditionText(sheet, scoring, columns, style);
    page.heading();
    page.requirements();
    page.offers();
    page.cost();
    page.pieces();
    page.problems();
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
  private void row(String label, int indent, String... cells) {
    int width = columns - cells.length * CELL - indent;
    ImmutableList<String> lines = ImmutableList.copyOf(TextLayout.wrap(label, width - 1, 2));
    int last = lines.size() - 1;
    lines.subList(0, last).forEach(line -> line(" ".repeat(indent) + line));
    line(" ".repeat(indent) + cells(TextLayout.pad(lines.get(last), width), cells));
  }

  private static String cells(String label, String... cells) {
    StringBuilder row = new StringBuilder(label);
    for (String cell : cells) {
      row.append(TextLayout.padLeft(cell, CELL));
    }
    return row.toString();
  }

  private void titles(String label, String... titles) {
    line(style.bold(cells(TextLayout.pad(label, columns - titles.length * CELL), titles)));
  }

  private void heading() {
    line(style.bold(sheet.sheet().title()));
    long scales = sheet.sheet().entries().stream().filter(AuditionSheet.Entry::scale).count();
    line(
        sheet.instrument().name()
            + ", "
            + count(scales, "scale")
            + ", "
            + count(sheet.sheet().entries().size() - scales, "excerpt"));
    paragraph(scoring.line(), 0);
    line("");
  }

  static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private void requirements() {
    if (sheet.audition().skills().isEmpty()) {
      return;
    }
    titles(
        "Asked for"
            + (sheet.sheet().inOnePiece() ? " in one piece" : "")
            + (sheet.sheet().excerptsOnly() ? " in the excerpts" : ""),
        "cheapest plans",
        "plans below");
    for (RequiredSkill skill : sheet.audition().skills()) {
      row(
          SkillWords.withAmount(skill.skill()),
          2,
          amount(skill, skill.amountInCheapest()),
          amount(skill, skill.amountShown()));
    }
    line("");
  }

  private static String amount(RequiredSkill skill, int amount) {
    return amount == 0
        ? "missing"
        : (amount < skill.skill().amount() ? "short: " : "")
            + SkillWords.amount(skill.skill(), amount);
  }

  private void offers() {
    List<RequiredSkill> unmet =
        sheet.audition().skills().stream().filter(skill -> !skill.metByCheapest()).toList();
    if (unmet.isEmpty()) {
      return;
    }
    titles("Where each could be shown alone", "extra points");
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
        : skill.met()
            ? ": not in any single piece"
            : ": not in these pieces; ask for less, or choose other pieces";
  }

  private void offer(RequiredSkill skill, MarginalCost offer) {
    row(
        sheet.title(offer.piece())
            + ", "
            + SkillWords.measures(offer.plan(), skill.skill(), offer.amount()),
        4,
        Long.toString(offer.extraCost()));
  }

  private void cost() {
    if (sheet.audition().skills().isEmpty()) {
      return;
    }
    long extra = sheet.audition().extraCost();
    boolean met = sheet.audition().met();
    String shown = met ? "everything that is asked for" : "as much as possible of it";
    paragraph(
        extra == 0
            ? "The plans below are the cheapest for each piece, and show " + shown + "."
            : "The plans below show %s at the least cost: %s more than the cheapest plans, over all pieces."
                .formatted(shown, count(extra, "point")),
        0);
    line("");
  }

  private void pieces() {
    for (int i = 0; i < sheet.ready().size(); i++) {
      TextLayout.wrap(sheet.title(i), columns, 3).forEach(one -> line(style.bold(one)));
      new AuditionPieceText(sheet, scoring, i).paragraphs().forEach(one -> paragraph(one, 3));
      line("");
    }
  }

  private void problems() {
    if (sheet.problems().isEmpty()) {
      return;
    }
    line(style.bold("Not planned"));
    for (SheetPieces.Problem problem : sheet.problems()) {
      paragraph(
          "%s, line %d: %s".formatted(sheet.sheet().file(), problem.line(), problem.message()), 2);
    }
    line("");
  }

  private void care() {
    boolean exceeded =
        IntStream.range(0, sheet.ready().size())
            .mapToObj(i -> ComfortableTempo.of(sheet.planned(i).plan(), scoring.level()))
            .anyMatch(ComfortableTempo::exceeded);
    if (exceeded) {
      paragraph("Some tempi are faster than comfortable. " + TempoText.CARE, 0);
    }
    paragraph(CARE, 0);
  }
}
