package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.engraving.glyph.Glyph;
import fingering.page.music.MusicPanel;
import fingering.page.template.JtepracticeGenerated;
import fingering.page.view.CircleGroup;
import fingering.page.view.PageHead;
import fingering.page.view.PageHead.Section;
import fingering.page.view.PracticeContent;
import fingering.page.view.PractisedSpot;
import fingering.page.view.SpotView;
import fingering.page.view.Templates;
import gg.jte.Content;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A self-contained HTML page for the practice of a plan. */
public final class PracticePage {
  private PracticePage() {}

  /** The page as HTML. */
  public static String of(PracticeContent content) {
    ImmutableList.Builder<Section> sections = ImmutableList.builder();
    sections.add(new Section("today", content.day()));
    if (!content.spots().isEmpty()) {
      sections.add(new Section("spots", text("practice.spots")));
    }
    sections.add(new Section("days", text("practice.days")));
    if (content.hasJournal()) {
      sections.add(new Section("progress", text("practice.journal")));
    }
    sections.add(new Section("circle", text("circles.heading")));
    PageHead head =
        new PageHead(
            content.title(),
            ImmutableList.of(),
            content.heading(),
            new Section("today", text("skip.today")),
            sections.build());
    ImmutableList<SpotView> spots = spots(content.spots());
    Content progress = Templates.elements(content.progress().orElse(""));
    return Templates.filled(
        output ->
            JtepracticeGenerated.render(
                output,
                Templates.PLAIN,
                head,
                PageStyle.sheet(),
                content,
                spots,
                progress,
                CircleGroup.of(content.circles(), false)));
  }

  /** The spots with their exercises in notes. */
  static ImmutableList<SpotView> spots(List<PractisedSpot> all) {
    Set<Glyph> known = EnumSet.noneOf(Glyph.class);
    ImmutableList.Builder<SpotView> spots = ImmutableList.builder();
    for (PractisedSpot spot : all) {
      String id = "exercise" + spots.build().size();
      spots.add(
          new SpotView(
              spot.measures(),
              spot.text(),
              spot.exercise()
                  .flatMap(MusicPanel::of)
                  .map(panel -> panel.html(id, MusicPanel.COLUMN, known))));
    }
    return spots.build();
  }
}
