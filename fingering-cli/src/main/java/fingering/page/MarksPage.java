package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.page.staff.Engraver;
import fingering.practice.Circle;
import java.util.List;

/** A self-contained HTML page of what to circle in a part, with links to the music below it. */
public final class MarksPage {
  private static final ImmutableMap<String, String> SECTIONS =
      ImmutableMap.of("circle", "What to circle in the part", "music", "The music");

  private MarksPage() {}

  /**
   * The page as HTML.
   *
   * @param title the title, not empty
   * @param heading the lines below it
   * @param printed what is printed in the passage
   * @param engraver draws the staff
   * @param care the warning about strain
   */
  public static String of(
      String title,
      List<String> heading,
      Passage passage,
      PrintedPart printed,
      ImmutableList<Circle> circles,
      Engraver engraver,
      String care) {
    PageFrame html =
        new PageFrame(
            title,
            heading,
            PageStyle.sheet(),
            new PageFrame.SkipLink("Skip to the list", "circle"),
            SECTIONS);
    html.section("circle", "What to circle in the part");
    html.raw(CircleLists.html(circles, true));
    html.endSection();
    html.section("music", "The music");
    html.raw(StripHtml.of(engraver.engrave(passage, printed, ImmutableList.of())));
    html.endSection();
    return html.end(care);
  }
}
