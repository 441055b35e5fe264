package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.page.staff.Engraver;
import fingering.page.staff.Lane;
import fingering.page.staff.PlainEngraver;
import fingering.page.staff.Strip;
import fingering.page.staff.Strip.Piece;
import fingering.page.svg.Svg;
import fingering.page.template.JtemusicGenerated;
import fingering.page.view.Music;
import fingering.page.view.PlaceLink;
import gg.jte.Content;
import gg.jte.html.HtmlContent;
import java.util.regex.Pattern;

/** The music of all pages, drawn by one engraver. No other class of pages knows the engraver. */
final class MusicPanel {
  private static final Engraver ENGRAVER = new PlainEngraver();

  private static final Pattern EMPTY_RING =
      Pattern.compile("<text class=\"key\"[^>]*></text><circle class=\"o\"[^>]*/>");

  private MusicPanel() {}

  /** The music of a page that has no other. */
  static Content of(Passage passage, PrintedPart printed, ImmutableList<Lane> lanes) {
    return html(engraved(passage, printed, lanes), "", true);
  }

  /**
   * One of several pieces of music on a page.
   *
   * @param id begins the ids of its measures
   * @param first whether it is the first on the page, which brings the shapes for all
   */
  static Content of(
      Passage passage, PrintedPart printed, ImmutableList<Lane> lanes, String id, boolean first) {
    return html(engraved(passage, printed, lanes).withIds(id), id, first);
  }

  /** The music in pieces, for a picture of it alone. */
  static Strip engraved(Passage passage, PrintedPart printed, ImmutableList<Lane> lanes) {
    Strip strip = ENGRAVER.engrave(passage, printed, lanes);
    return lanes.size() == 1 && lanes.get(0).key().isEmpty() ? withoutKey(strip) : strip;
  }

  /** The only plan has no letter: neither a ring around it, nor a space before its marks. */
  private static Strip withoutKey(Strip strip) {
    return new Strip(
        strip.shapes(),
        EMPTY_RING.matcher(strip.heads()).replaceAll(""),
        strip.height(),
        strip.margin(),
        strip.pieces().stream()
            .map(
                piece ->
                    new Piece(
                        piece.measure(),
                        piece.number(),
                        piece.first(),
                        piece.width(),
                        piece.head(),
                        piece.body(),
                        piece.words().replace(":  ", ": ")))
            .collect(ImmutableList.toImmutableList()));
  }

  private static HtmlContent html(Strip strip, String prefix, boolean first) {
    ImmutableList.Builder<Music.Piece> pieces = ImmutableList.builder();
    int layer = strip.pieces().size();
    for (Piece piece : strip.pieces()) {
      pieces.add(
          new Music.Piece(
              piece.first() ? prefix + PlaceLink.id(piece.measure()) : "",
              layer--,
              piece.width(),
              piece.words(),
              Templates.elements(piece.head() + piece.body())));
    }
    String shapes = (first ? strip.shapes() + Svg.hatching("hatch") : "") + strip.heads();
    Music music =
        new Music(Templates.elements(shapes), strip.margin(), strip.height(), pieces.build());
    return output -> JtemusicGenerated.render(output, Templates.PLAIN, music);
  }
}
