package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.page.staff.Engraver;
import fingering.page.staff.Lane;
import fingering.page.staff.Strip;
import fingering.svg.Svg;
import java.util.List;

/** A self-contained HTML page of an audition: what is asked for, and each piece with its music. */
public final class AuditionPage {
  private static final String ASKED = "asked";
  private static final String LEFT_OUT = "left-out";

  private final AuditionContent content;
  private final Engraver engraver;
  private final PageFrame html;

  private AuditionPage(AuditionContent content, Engraver engraver) {
    this.content = content;
    this.engraver = engraver;
    ImmutableMap.Builder<String, String> sections = ImmutableMap.builder();
    if (!content.rows().isEmpty()) {
      sections.put(ASKED, "What is asked for");
    }
    for (int i = 0; i < content.pieces().size(); i++) {
      sections.put(id(i), content.pieces().get(i).title());
    }
    if (!content.problems().isEmpty()) {
      sections.put(LEFT_OUT, "Not planned");
    }
    html =
        new PageFrame(
            content.title(),
            content.heading(),
            PageStyle.sheet(),
            new PageFrame.SkipLink("Skip to the music", id(0)),
            sections.buildOrThrow());
  }

  /** The page, with the staff drawn by an engraver. */
  public static String of(AuditionContent content, Engraver engraver) {
    return new AuditionPage(content, engraver).page();
  }

  private static String id(int piece) {
    return "piece" + (piece + 1);
  }

  private String page() {
    if (!content.rows().isEmpty()) {
      html.section(ASKED, "What is asked for");
      table();
      html.endSection();
    }
    for (int i = 0; i < content.pieces().size(); i++) {
      html.section(id(i), content.pieces().get(i).title());
      piece(i);
      html.endSection();
    }
    if (!content.problems().isEmpty()) {
      html.section(LEFT_OUT, "Not planned");
      html.list(content.problems());
      html.endSection();
    }
    return html.end(content.care());
  }

  private void table() {
    html.raw("<table class=\"asked\"><thead><tr>");
    content.columns().forEach(head -> html.raw("<th scope=\"col\">" + Svg.escaped(head) + "</th>"));
    html.raw("</tr></thead><tbody>\n");
    for (List<String> row : content.rows()) {
      html.raw("<tr><th scope=\"row\">" + Svg.escaped(row.get(0)) + "</th>");
      row.stream().skip(1).forEach(cell -> html.raw("<td>" + Svg.escaped(cell) + "</td>"));
      html.raw("</tr>\n");
    }
    html.raw("</tbody></table>\n");
  }

  private void piece(int number) {
    AuditionContent.Piece piece = content.pieces().get(number);
    ImmutableList<Lane> lanes = Lanes.of(piece.plan());
    Strip strip =
        engraver.engrave(piece.plan().passage(), piece.printed(), lanes).withIds(id(number));
    html.list(piece.lines());
    if (number == 0) {
      html.raw(StripHtml.shapes(strip));
      List<String> legend = StripSvg.legend(lanes);
      html.paragraph("note", legend.get(legend.size() - 1));
    }
    html.raw(StripHtml.rows(strip, id(number)));
  }
}
