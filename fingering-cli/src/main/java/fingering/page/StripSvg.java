package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.page.staff.Lane;
import fingering.page.staff.StaffStyle;
import fingering.page.staff.Strip;
import fingering.page.staff.Strip.Piece;
import fingering.svg.Svg;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The strip alone, as a picture that fits between the margins of A4 or Letter paper. */
public final class StripSvg {
  private static final int WIDTH = 700;
  private static final int LINE = 17;
  private static final int MARGIN = 10;
  private static final double LETTERS = 12;
  private static final String SHEET = "svg{--ink:#111;--line:#666;--paper:#fff;--mark:#ffe9a8}";
  private static final String LETTERING =
      ".title{font-size:18px;font-weight:bold}.note{font-size:12px}";

  private StripSvg() {}

  /** Draws the strip of a page's plans. */
  public static String of(PageContent content) {
    ImmutableList<Lane> lanes = Lanes.of(content.comparison());
    Strip strip = MusicPanel.engraved(content.comparison().passage(), content.printed(), lanes);
    Svg svg = new Svg();
    double y = 24;
    svg.text("title", 0, 20, content.title());
    List<String> words = new ArrayList<>(content.about().subList(0, 1));
    words.addAll(Lanes.key(lanes));
    words.add(Lanes.signs(lanes));
    for (String line : wrapped(words)) {
      y += LINE;
      svg.text("note", 0, y, line);
    }
    y += LINE;
    for (List<Piece> row : rows(strip)) {
      double x = strip.margin();
      svg.group(x, y, row.get(0).head());
      for (Piece piece : row) {
        svg.inner(x, y, piece.width(), strip.height(), piece.body());
        x += piece.width();
      }
      y += strip.height() + 6;
    }
    for (String line : wrapped(List.of(content.care()))) {
      y += LINE;
      svg.text("note", 0, y, line);
    }
    return svg.file(
        "strip ink",
        WIDTH,
        (int) Math.ceil(y + LINE),
        MARGIN,
        content.title(),
        strip.pieces().stream().map(Piece::words).collect(Collectors.joining(" ")),
        SHEET + StaffStyle.sheet().replace("\n", "") + LETTERING,
        strip.shapes() + strip.heads());
  }

  private static List<List<Piece>> rows(Strip strip) {
    List<List<Piece>> rows = new ArrayList<>();
    int used = 0;
    for (Piece piece : strip.pieces()) {
      if (rows.isEmpty() || used + piece.width() > WIDTH) {
        rows.add(new ArrayList<>());
        used = strip.margin();
      }
      rows.get(rows.size() - 1).add(piece);
      used += piece.width();
    }
    return rows;
  }

  private static List<String> wrapped(List<String> paragraphs) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : paragraphs) {
      StringBuilder line = new StringBuilder();
      for (String word : paragraph.split(" ", -1)) {
        if (TextWidth.of(line + " " + word, LETTERS) > WIDTH) {
          lines.add(line.toString());
          line.setLength(0);
        }
        line.append(line.length() == 0 ? "" : " ").append(word);
      }
      lines.add(line.toString());
    }
    return lines;
  }
}
