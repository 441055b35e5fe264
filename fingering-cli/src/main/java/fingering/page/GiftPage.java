package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.engraving.glyph.Glyph;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.page.music.Rings;
import fingering.page.template.JtegiftGenerated;
import fingering.page.view.CircleGroup;
import fingering.page.view.GiftView;
import fingering.page.view.HandoutContent;
import fingering.page.view.PageHead;
import fingering.page.view.PageHead.Section;
import fingering.page.view.PractisedSpot;
import fingering.page.view.SpotView;
import fingering.page.view.Templates;
import fingering.tables.FingeringException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Set;

/**
 * One file for a student: the music with the fingers of one plan and what to circle, its sound to
 * play along with, the tempo ladder and a few spots. It needs no network, and fits in a mail.
 */
public final class GiftPage {
  /** The largest file, in bytes: phones open it at once, and mail servers take it. */
  private static final int MOST = 1_000_000;

  /** The size of a file with short lines alone that leaves room for long ones. */
  private static final int ROOMY = MOST * 6 / 10;

  private GiftPage() {}

  /**
   * The file as HTML. If long and short lines together are too large, it has the short ones alone.
   *
   * @throws FingeringException if the music is too long
   */
  public static String of(HandoutContent content, SoundTable sound) {
    String narrow = page(content, sound, false);
    if (size(narrow) > MOST) {
      throw new FingeringException(text("gift.large"));
    }
    String both = size(narrow) > ROOMY ? narrow : page(content, sound, true);
    return size(both) > MOST ? narrow : both;
  }

  private static int size(String page) {
    return page.getBytes(StandardCharsets.UTF_8).length;
  }

  private static String page(HandoutContent content, SoundTable sound, boolean wide) {
    Lanes lanes = Lanes.of(content.plan());
    MusicPanel panel =
        new MusicPanel(
            content.plan().passage(),
            content.printed(),
            lanes,
            Rings.of(content.plan().passage(), content.circles()));
    Set<Glyph> known = EnumSet.noneOf(Glyph.class);
    GiftView view =
        new GiftView(
            panel.played(wide, known),
            lanes.signs() + " " + text("gift.rings"),
            Templates.elements(sound.json()),
            Templates.elements(PageStyle.player()),
            content.ladder(),
            spots(content.spots(), known),
            CircleGroup.of(content.circles(), true));
    PageHead head = head(content, view);
    return Templates.filled(
        output ->
            JtegiftGenerated.render(
                output, Templates.PLAIN, head, PageStyle.gift(), view, content.care()));
  }

  private static PageHead head(HandoutContent content, GiftView view) {
    ImmutableList.Builder<String> about = ImmutableList.builder();
    if (content.student().isPresent() || content.day().isPresent()) {
      String none = text("handout.line");
      about.add(
          text(
              "handout.student",
              content.student().orElse(none),
              content.day().orElse(none),
              content.goal().orElse(none)));
    }
    about.add(text("handout.music", content.music(), content.plan().name()));
    ImmutableList.Builder<Section> sections = ImmutableList.builder();
    sections.add(new Section("music", text("music.heading")));
    if (view.ladder().isPresent()) {
      sections.add(new Section("days", text("practice.ladder")));
    }
    if (!view.spots().isEmpty()) {
      sections.add(new Section("spots", text("handout.spots")));
    }
    sections.add(new Section("circle", text("circles.heading")));
    return new PageHead(
        content.title(),
        ImmutableList.of(),
        about.build(),
        new Section("music", text("skip.music")),
        sections.build());
  }

  private static ImmutableList<SpotView> spots(
      ImmutableList<PractisedSpot> spots, Set<Glyph> known) {
    ImmutableList.Builder<SpotView> views = ImmutableList.builder();
    for (PractisedSpot spot : spots) {
      String id = "exercise" + views.build().size();
      views.add(
          new SpotView(
              spot.measures(),
              spot.text(),
              spot.exercise()
                  .flatMap(MusicPanel::of)
                  .map(exercise -> exercise.html(id, MusicPanel.COLUMN, known))));
    }
    return views.build();
  }
}
