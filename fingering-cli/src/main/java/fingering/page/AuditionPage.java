package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.engraving.glyph.Glyph;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.page.template.JteauditionGenerated;
import fingering.page.view.AuditionPiece;
import fingering.page.view.PageHead;
import fingering.page.view.PageHead.Section;
import fingering.page.view.Templates;
import java.util.EnumSet;
import java.util.Set;

/** A self-contained HTML page of an audition: what is required, and each piece with its music. */
public final class AuditionPage {
  private AuditionPage() {}

  /** The page as HTML. */
  public static String of(AuditionContent content) {
    ImmutableList.Builder<AuditionPiece> pieces = ImmutableList.builder();
    Set<Glyph> known = EnumSet.noneOf(Glyph.class);
    for (int i = 0; i < content.pieces().size(); i++) {
      pieces.add(piece(content.pieces().get(i), "piece" + (i + 1), known));
    }
    PageHead head = head(content, pieces.build());
    return Templates.filled(
        output ->
            JteauditionGenerated.render(
                output,
                Templates.PLAIN,
                head,
                PageStyle.sheet(),
                content.asked(),
                pieces.build(),
                content.problems(),
                content.care()));
  }

  private static PageHead head(AuditionContent content, ImmutableList<AuditionPiece> pieces) {
    ImmutableList.Builder<Section> sections = ImmutableList.builder();
    if (!content.asked().rows().isEmpty()) {
      sections.add(new Section("asked", text("audition.asked")));
    }
    pieces.forEach(piece -> sections.add(new Section(piece.id(), piece.title())));
    if (!content.problems().isEmpty()) {
      sections.add(new Section("left-out", text("audition.left-out")));
    }
    return new PageHead(
        content.title(),
        content.answer(),
        content.about(),
        new Section("piece1", text("skip.music")),
        sections.build());
  }

  /**
   * A piece with its music.
   *
   * @param id begins the ids of its measures
   * @param known the shapes that the page has already; those of this music are added
   */
  public static AuditionPiece piece(AuditionContent.Piece piece, String id, Set<Glyph> known) {
    Lanes lanes = Lanes.of(piece.plan().plans().get(0));
    return new AuditionPiece(
        id,
        piece.title(),
        piece.lines(),
        known.isEmpty() ? lanes.signs() : "",
        new MusicPanel(piece.plan().passage(), piece.printed(), lanes)
            .html(id, MusicPanel.WIDE, known));
  }
}
