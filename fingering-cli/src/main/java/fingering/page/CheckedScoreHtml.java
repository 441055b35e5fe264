package fingering.page;

import fingering.check.CheckTally;
import fingering.check.CheckedFile;
import fingering.check.FindingGroup;
import fingering.check.ReportOptions;
import fingering.svg.Svg;
import fingering.playability.Difficulty;
import fingering.playability.Forces;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The section of a score on the page of a check. */
final class CheckedScoreHtml {
  private static final String COUNTS =
      "<th scope=\"col\" class=\"count\">Unplay&shy;able</th>"
          + "<th scope=\"col\" class=\"count\">Risky</th>"
          + "<th scope=\"col\" class=\"count\">Worth knowing</th></tr></thead><tbody>";

  private final ReportOptions options;
  private final String id;
  private final CheckedFile file;
  private final ScoreCheck check;
  private final StringBuilder html = new StringBuilder();

  CheckedScoreHtml(ReportOptions options, int number, CheckedFile file, ScoreCheck check) {
    this.options = options;
    id = "s" + number;
    this.file = file;
    this.check = check;
  }

  /** A table of all scores, with a row and a link for each. */
  static String table(CheckTally tally) {
    StringBuilder html = new StringBuilder();
    html.append(
            "<table class=\"counts\"><caption>Findings and the hardest part</caption><thead><tr>")
        .append("<th scope=\"col\">Score</th><th scope=\"col\">Hardest part</th>")
        .append(COUNTS);
    int number = 0;
    for (CheckTally.Line line : tally.lines()) {
      number++;
      html.append("<tr><th scope=\"row\"><a href=\"#s")
          .append(number)
          .append("\">")
          .append(Svg.escaped(line.title()))
          .append("</a></th><td>");
      line.hardest()
          .ifPresent(
              part -> html.append(Svg.escaped(part.part() + ", " + part.grade() + " of 10")));
      html.append("</td>");
      counts(html, line.counts());
      html.append("</tr>");
    }
    return html.append("</tbody></table>\n").toString();
  }

  String html() {
    html.append(
            "<section id=\"%s\" aria-labelledby=\"%s-h\"><h2 id=\"%s-h\">".formatted(id, id, id))
        .append(Svg.escaped(file.title()))
        .append("</h2>\n<p class=\"file\">")
        .append(Svg.escaped(file.name()))
        .append("</p>\n");
    check.remarks().forEach(remark -> paragraph("Note: " + remark));
    parts();
    if (!check.leftOut().isEmpty()) {
      paragraph(
          "Not checked: "
              + check.leftOut().stream().map(part -> part.name()).collect(Collectors.joining(", "))
              + ".");
    }
    check.parts().forEach(this::part);
    return html.append("</section>\n").toString();
  }

  private static void counts(StringBuilder html, Map<Severity, Integer> counts) {
    counts
        .values()
        .forEach(
            n ->
                html.append("<td class=\"count\">")
                    .append(n == 0 ? "–" : Integer.toString(n))
                    .append("</td>"));
  }

  private void paragraph(String text) {
    html.append("<p>").append(Svg.escaped(text)).append("</p>\n");
  }

  private String id(PartCheck part) {
    return id + "p" + part.part().number();
  }

  private void parts() {
    html.append(
            "<table class=\"counts\"><caption>By part</caption><thead><tr><th"
                + " scope=\"col\">Part</th>")
        .append("<th scope=\"col\" class=\"count\">Difficulty</th>")
        .append(COUNTS);
    for (PartCheck part : check.parts()) {
      html.append("<tr><th scope=\"row\"><a href=\"#%s\">".formatted(id(part)))
          .append(Svg.escaped(part.part().name()))
          .append("</a></th><td class=\"count\">")
          .append(part.difficulty().grade())
          .append("</td>");
      counts(html, CheckTally.counts(part));
      html.append("</tr>");
    }
    html.append("</tbody></table>\n");
  }

  private void part(PartCheck part) {
    html.append("<h3 id=\"%s\">".formatted(id(part)))
        .append(Svg.escaped(part.part().name()))
        .append("</h3>\n");
    paragraph(
        "%s, played by %s; %d measures."
            .formatted(
                part.instrument().name(),
                part.forces() == Forces.SECTION ? "a section" : "one player",
                part.measures()));
    part.remarks().forEach(remark -> paragraph("Note: " + remark));
    difficulty(part.difficulty());
    Optional<Severity> last = Optional.empty();
    for (FindingGroup group : FindingGroup.of(options.shown(part), part.movements())) {
      if (!last.equals(Optional.of(group.severity()))) {
        html.append("<h4>").append(capital(group.severity().label())).append("</h4>\n");
        last = Optional.of(group.severity());
      }
      group(group);
    }
    if (last.isEmpty()) {
      paragraph("No findings.");
    }
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private void difficulty(Difficulty difficulty) {
    html.append("<details class=\"found\"><summary>Difficulty ")
        .append(difficulty.grade())
        .append(" of 10</summary><table><thead><tr><th scope=\"col\">Aspect</th>")
        .append("<th scope=\"col\">Amount</th><th scope=\"col\" class=\"count\">Grade</th>")
        .append("</tr></thead><tbody>");
    for (Difficulty.Component component : difficulty.components()) {
      html.append("<tr><th scope=\"row\">")
          .append(Svg.escaped(component.name()))
          .append("</th><td>")
          .append(Svg.escaped(component.amount()))
          .append("</td><td class=\"count\">")
          .append(String.format(Locale.ROOT, "%.1f", component.grade()))
          .append("</td></tr>");
    }
    html.append("</tbody></table></details>\n");
  }

  private void group(FindingGroup group) {
    html.append("<details class=\"found\" open><summary>")
        .append(Svg.escaped(capital(group.kind().title())))
        .append(group.findings().size() == 1 ? "" : " (" + group.findings().size() + ")")
        .append("</summary><ul>");
    for (FindingGroup.Sentence sentence : group.sentences(Integer.MAX_VALUE - 1)) {
      html.append("<li><span class=\"where\">")
          .append(Svg.escaped(sentence.where()))
          .append(":</span> ")
          .append(Svg.escaped(sentence.reason()));
      sentence
          .suggestion()
          .ifPresent(
              fix ->
                  html.append(" <span class=\"fix\">").append(Svg.escaped(fix)).append("</span>"));
      html.append("</li>");
    }
    html.append("</ul></details>\n");
  }
}
