package fingering.page;

import fingering.check.CheckReport;
import fingering.check.CheckTally;
import fingering.check.CheckedFile;
import fingering.check.ReportOptions;
import fingering.check.Spool;
import fingering.page.svg.Svg;
import fingering.playability.Difficulty;
import fingering.playability.FindingKind;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * The page of a check: all scores in a table, then each score with its parts. The table stands
 * first and is known last, so that the scores wait for it on the disk.
 */
public final class CheckPage implements CheckReport {
  private static final String CARE =
      "The players and their teachers have the last word. Playing can hurt: where the hand has to"
          + " stretch or to hurry, stop on pain, rest, and ask a teacher or a clinician.";

  private final ReportOptions asked;
  private final Consumer<String> printing;
  private final Spool scores = new Spool();
  private final Set<FindingKind> kinds = EnumSet.noneOf(FindingKind.class);
  private int count;

  /** A page that is printed piece by piece. */
  public CheckPage(ReportOptions asked, Consumer<String> printing) {
    this.asked = asked;
    this.printing = printing;
  }

  @Override
  public void begin() {
    // All is said at the end, when it is known.
  }

  @Override
  public void add(CheckedFile file) {
    file.check().ifPresent(check -> add(file, check));
  }

  private void add(CheckedFile file, ScoreCheck check) {
    count++;
    check.parts().forEach(part -> asked.shown(part).forEach(found -> kinds.add(found.kind())));
    scores.add(new CheckedScoreHtml(asked, count, file, check).html());
  }

  @Override
  public void end(CheckTally tally) {
    String title =
        tally.lines().size() == 1 ? tally.lines().get(0).title() : tally.lines().size() + " scores";
    StringBuilder html = new StringBuilder();
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<meta name=\"color-scheme\" content=\"light dark\">\n<title>")
        .append(Svg.escaped(title + ": can it be played?"))
        .append("</title>\n<style>\n")
        .append(CheckStyle.sheet())
        .append("</style>\n</head>\n<body>\n")
        .append("<a class=\"skip\" href=\"#")
        .append(several(tally) ? "scores" : "s1")
        .append("\">To the findings</a>\n<header>\n<h1>")
        .append(Svg.escaped(title + ": can it be played?"))
        .append("</h1>\n<p class=\"lead\">")
        .append(Svg.escaped("Checked for players of the level " + asked.level().name() + ". "))
        .append(Svg.escaped(counted(tally.total())))
        .append("</p>\n");
    nav(html, tally);
    html.append("</header>\n<main>\n");
    refused(html, tally);
    if (several(tally)) {
      html.append("<section id=\"scores\" aria-labelledby=\"scores-h\">")
          .append("<h2 id=\"scores-h\">All scores</h2>\n")
          .append(CheckedScoreHtml.table(tally))
          .append("</section>\n");
    }
    printing.accept(html.toString());
    scores.pour(printing);
    printing.accept(explained() + "</main>\n<footer><p class=\"care\">" + CARE);
    printing.accept("</p>\n</footer>\n</body>\n</html>\n");
  }

  private static boolean several(CheckTally tally) {
    return tally.lines().size() != 1;
  }

  private void nav(StringBuilder html, CheckTally tally) {
    html.append("<nav aria-label=\"On this page\"><ul>");
    if (!tally.refused().isEmpty()) {
      html.append("<li><a href=\"#refused\">Not checked</a></li>");
    }
    html.append(
            several(tally)
                ? "<li><a href=\"#scores\">All scores</a></li>"
                : "<li><a href=\"#s1\">The findings</a></li>")
        .append("<li><a href=\"#meaning\">What it means</a></li></ul></nav>\n");
  }

  /** Findings in words. */
  private static String counted(Map<Severity, Integer> counts) {
    return counts.entrySet().stream()
        .map(count -> count.getValue() + " " + count.getKey().label())
        .collect(Collectors.joining(", ", "Found: ", "."));
  }

  private void refused(StringBuilder html, CheckTally tally) {
    if (tally.refused().isEmpty()) {
      return;
    }
    html.append("<section id=\"refused\" aria-labelledby=\"refused-h\">")
        .append("<h2 id=\"refused-h\">Not checked</h2>\n<ul class=\"file\">");
    tally.refused().forEach(line -> html.append("<li>").append(Svg.escaped(line)).append("</li>"));
    html.append("</ul></section>\n");
  }

  private String explained() {
    StringBuilder html = new StringBuilder();
    html.append("<section id=\"meaning\" aria-labelledby=\"meaning-h\">")
        .append("<h2 id=\"meaning-h\">What it means</h2>\n<dl>");
    meaning(html, "Unplayable", "No player and no bow can do it as it is written.");
    meaning(html, "Risky", "It can go wrong with players of the level.");
    meaning(
        html,
        "Worth knowing",
        "It can be played; the arranger may want to know, or to say more in the part.");
    meaning(html, "Difficulty, 1 to 10", Difficulty.EXPLANATION);
    kinds.forEach(kind -> meaning(html, kind.title(), kind.explanation()));
    return html.append("</dl></section>\n").toString();
  }

  private static void meaning(StringBuilder html, String what, String explanation) {
    html.append("<dt>").append(Svg.escaped(what)).append("</dt><dd>");
    html.append(Svg.escaped(explanation)).append("</dd>");
  }
}
