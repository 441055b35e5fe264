package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.MarginalCost;
import fingering.audition.RequiredSkill;
import fingering.cli.option.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.cli.text.TempoText;
import fingering.tempo.ComfortableTempo;
import java.util.List;
import java.util.stream.IntStream;

/** A sheet with its plans, for a terminal: to be read by the teacher and handed to the student. */
public final class AuditionText {
  private static final String CARE =
      "Going up, stretching and long practice can hurt: stop on pain, rest, and ask your teacher"
          + " or a clinician. Your teacher has the last word on every fingering.";

  private static final int CELL = 16;
  private static final int OFFERS = 3;

  private final PlannedSheet answer;
  private final ScoringContext charging;
  private final int columns;
  private final TextStyle style;
  private final StringBuilder text = new StringBuilder();

  private AuditionText(PlannedSheet answer, ScoringContext charging, int columns, TextStyle style) {
    this.answer = answer;
    this.charging = charging;
    this.columns = columns;
    this.style = style;
  }

  public static String of(
      PlannedSheet answer, ScoringContext charging, int columns, TextStyle style) {
    AuditionText page = new AuditionText(answer, charging, columns, style);
    page.heading();
    page.asked();
    page.offers();
    page.price();
    page.pieces();
    page.problems();
    page.care();
    return page.text.toString();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  /** A paragraph, all of it so far from the left, and what is wrapped two columns further. */
  private void paragraph(String paragraph, int left) {
    TextLayout.wrap(paragraph, columns - left, 2).forEach(one -> line(" ".repeat(left) + one));
  }

  /** Words on the left, wrapped where they are long, and short cells on the right of the last. */
  private void row(String words, int left, String... cells) {
    int label = columns - cells.length * CELL - left;
    ImmutableList<String> lines = ImmutableList.copyOf(TextLayout.wrap(words, label - 1, 2));
    int last = lines.size() - 1;
    lines.subList(0, last).forEach(one -> line(" ".repeat(left) + one));
    line(" ".repeat(left) + cells(TextLayout.pad(lines.get(last), label), cells));
  }

  private static String cells(String label, String... cells) {
    StringBuilder row = new StringBuilder(label);
    for (String cell : cells) {
      row.append(TextLayout.padLeft(cell, CELL));
    }
    return row.toString();
  }

  private void titles(String words, String... titles) {
    line(style.bold(cells(TextLayout.pad(words, columns - titles.length * CELL), titles)));
  }

  private void heading() {
    line(style.bold(answer.sheet().title()));
    long scales = answer.sheet().entries().stream().filter(AuditionSheet.Entry::scale).count();
    line(
        answer.instrument().name()
            + ", "
            + count(scales, "scale")
            + ", "
            + count(answer.sheet().entries().size() - scales, "excerpt"));
    paragraph(charging.line(), 0);
    line("");
  }

  static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private void asked() {
    if (answer.audition().skills().isEmpty()) {
      return;
    }
    titles(
        "Asked for"
            + (answer.sheet().inOnePiece() ? " in one piece" : "")
            + (answer.sheet().excerptsOnly() ? " in the excerpts" : ""),
        "cheapest plans",
        "plans below");
    for (RequiredSkill skill : answer.audition().skills()) {
      row(
          SkillWords.asked(skill.skill()),
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
    List<RequiredSkill> wanting =
        answer.audition().skills().stream().filter(skill -> !skill.metByCheapest()).toList();
    if (wanting.isEmpty()) {
      return;
    }
    titles("Where each could be shown by itself", "points more");
    for (RequiredSkill skill : wanting) {
      paragraph(SkillWords.asked(skill.skill()) + none(skill), 2);
      skill.marginalCosts().stream().limit(OFFERS).forEach(offer -> offer(skill, offer));
      int untold = skill.marginalCosts().size() - OFFERS;
      if (untold > 0) {
        paragraph("and in " + count(untold, "other piece") + " for more", 4);
      }
    }
    line("");
  }

  /** What is said of a skill that no piece can make up by itself; nothing of others. */
  private static String none(RequiredSkill skill) {
    return !skill.marginalCosts().isEmpty()
        ? ""
        : skill.met()
            ? ": in no piece alone"
            : ": not in these pieces; ask for less, or choose other pieces";
  }

  private void offer(RequiredSkill skill, MarginalCost offer) {
    row(
        answer.title(offer.piece())
            + ", "
            + SkillWords.measures(offer.plan(), skill.skill(), offer.amount()),
        4,
        Long.toString(offer.extraCost()));
  }

  private void price() {
    if (answer.audition().skills().isEmpty()) {
      return;
    }
    long extra = answer.audition().extraCost();
    boolean met = answer.audition().met();
    String shown = met ? "all that is asked for" : "what can be shown of it";
    paragraph(
        extra == 0
            ? "The plans below are the cheapest of each piece, and show " + shown + "."
            : "The plans below show %s at the least cost: %s above the cheapest plans, all pieces added up."
                .formatted(shown, count(extra, "point")),
        0);
    line("");
  }

  private void pieces() {
    for (int i = 0; i < answer.ready().size(); i++) {
      TextLayout.wrap(answer.title(i), columns, 3).forEach(one -> line(style.bold(one)));
      new AuditionPieceText(answer, charging, i).told().forEach(one -> paragraph(one, 3));
      line("");
    }
  }

  private void problems() {
    if (answer.problems().isEmpty()) {
      return;
    }
    line(style.bold("Not planned"));
    for (SheetPieces.Problem problem : answer.problems()) {
      paragraph(
          "%s, line %d: %s".formatted(answer.sheet().file(), problem.line(), problem.says()), 2);
    }
    line("");
  }

  private void care() {
    boolean exceeded =
        IntStream.range(0, answer.ready().size())
            .mapToObj(i -> ComfortableTempo.of(answer.planned(i).plan(), charging.level()))
            .anyMatch(ComfortableTempo::exceeded);
    if (exceeded) {
      paragraph("Some tempi asked for are above the comfortable ones. " + TempoText.CARE, 0);
    }
    paragraph(CARE, 0);
  }
}
