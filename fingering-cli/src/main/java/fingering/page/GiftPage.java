package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.engraving.glyph.Glyph;
import fingering.music.Measure;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.page.music.Rings;
import fingering.page.template.JtegiftGenerated;
import fingering.page.template.JtepackedGenerated;
import fingering.page.view.CircleGroup;
import fingering.page.view.GiftView;
import fingering.page.view.HandoutContent;
import fingering.page.view.Music;
import fingering.page.view.PageHead;
import fingering.page.view.PageHead.Section;
import fingering.page.view.PractisedSpot;
import fingering.page.view.SpotView;
import fingering.page.view.Templates;
import fingering.tables.FingeringException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * One file for a student: the music with the fingers of one plan and what to circle, its sound to
 * play along with, the tempo ladder and a few spots. It needs no network, and fits in a mail.
 */
public final class GiftPage {
  /** The largest file, in bytes: phones open it at once, and mail servers take it. */
  private static final int MOST = 1_000_000;

  private GiftPage() {}

  /**
   * The file as HTML. Short music stands there as it is. If it is longer, the long lines and the
   * sound are packed, and the browser unpacks them; then the short lines are packed, too, and at
   * last the long ones are left out.
   *
   * @throws FingeringException if the music is too long
   */
  public static String of(HandoutContent content, SoundTable sound) {
    Lanes lanes = Lanes.of(content.plan());
    MusicPanel panel =
        new MusicPanel(
            content.plan().passage(),
            content.printed(),
            lanes,
            Rings.of(content.plan().passage(), content.circles()));
    Set<Glyph> known = EnumSet.noneOf(Glyph.class);
    Music all = panel.played(known);
    GiftView view =
        new GiftView(
            all,
            "",
            lanes.signs() + " " + text("gift.rings"),
            sound.json(),
            Templates.elements(PageStyle.player()),
            content.ladder(),
            spots(content.spots(), known),
            CircleGroup.of(content.circles(), true));
    Music shapes = all.withoutWide().withoutNarrow();
    return Stream.<Supplier<GiftView>>of(
            () -> view,
            () -> view.packing(all.withoutWide(), packed(all.withoutNarrow(), sound)),
            () -> view.packing(shapes, packed(all, sound)),
            () -> view.packing(shapes, packed(all.withoutWide(), sound)))
        .map(Supplier::get)
        .map(one -> page(content, one))
        .filter(page -> page.getBytes(StandardCharsets.UTF_8).length <= MOST)
        .findFirst()
        .orElseThrow(() -> tooLong(content.plan().passage().measures()));
  }

  private static FingeringException tooLong(ImmutableList<Measure> measures) {
    return new FingeringException(
        text(
            "gift.large",
            measures.get(0).number() + "-" + measures.get(measures.size() / 2).number()));
  }

  private static String page(HandoutContent content, GiftView view) {
    PageHead head = head(content, view);
    return Templates.filled(
        output ->
            JtegiftGenerated.render(
                output, Templates.PLAIN, head, PageStyle.gift(), view, content.care()));
  }

  /** Lines of music, and what is played with them, compressed and as Base64. */
  private static String packed(Music music, SoundTable sound) {
    String lines =
        Templates.filled(
            output -> JtepackedGenerated.render(output, Templates.PLAIN, music, sound.json()));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Deflater best = new Deflater(Deflater.BEST_COMPRESSION);
    try (DeflaterOutputStream packing = new DeflaterOutputStream(bytes, best)) {
      packing.write(lines.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      best.end();
    }
    return Base64.getEncoder().encodeToString(bytes.toByteArray());
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
