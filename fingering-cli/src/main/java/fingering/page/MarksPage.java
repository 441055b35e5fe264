package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.page.music.Rings;
import fingering.page.template.JtemarksGenerated;
import fingering.page.view.CircleGroup;
import fingering.page.view.PageHead;
import fingering.page.view.PageHead.Section;
import fingering.page.view.Templates;
import fingering.practice.Circle;
import gg.jte.Content;

/** A self-contained HTML page of what to circle in a part, with links to the music below it. */
public final class MarksPage {
  private MarksPage() {}

  /**
   * The page as HTML.
   *
   * @param title the title, not empty
   * @param about the lines below it
   * @param printed what is printed in the passage
   * @param care the warning about strain
   */
  public static String of(
      String title,
      ImmutableList<String> about,
      Passage passage,
      PrintedPart printed,
      ImmutableList<Circle> circles,
      String care) {
    PageHead head =
        new PageHead(
            title,
            ImmutableList.of(),
            about,
            new Section("circle", text("skip.list")),
            ImmutableList.of(
                new Section("circle", text("circles.heading")),
                new Section("music", text("music.heading"))));
    Content music = new MusicPanel(passage, printed, Lanes.NONE, Rings.of(passage, circles)).html();
    return Templates.filled(
        output ->
            JtemarksGenerated.render(
                output,
                Templates.PLAIN,
                head,
                PageStyle.sheet(),
                CircleGroup.of(circles, true),
                music,
                care));
  }
}
