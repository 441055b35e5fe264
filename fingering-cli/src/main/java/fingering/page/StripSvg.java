package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.page.staff.Engraver;
import fingering.page.staff.Lane;
import fingering.page.staff.StaffStyle;
import fingering.page.staff.Strip;
import fingering.page.staff.Strip.Piece;
import fingering.svg.Svg;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.List;

/** The strip alone, as a picture that fits between the margins of A4 or Letter paper. */
public final class StripSvg {
  private static final int WIDTH = 700;
  private static final int LINE = 17;
  private static final double LETTERS = 12;

  private StripSvg() {}

  /** Draws the strip of a page's plans. */
  public static String of(PageContent content, Engraver engraver) {
    ImmutableList<Lane> lanes = Lanes.of(content.comparison());
    Strip strip = engraver.engrave(content.comparison().passage(), content.printed(), lanes);
    Svg svg = new Svg();
    double y = 24;
    svg.raw("<text class=\"title\" x=\"0\" y=\"20\">" + Svg.escaped(content.title()) + "</text>");
    List<String> words = new ArrayList<>(content.heading().subList(0, 1));
    words.addAll(legend(lanes));
    for (String line : wrapped(words)) {
      y += LINE;
      svg.text("note", 0, y, line);
    }
    y += LINE;
    for (List<Piece> row : rows(strip)) {
      double x = strip.margin();
      svg.raw(group(x, y, row.get(0).head()));
      for (Piece piece : row) {
        svg.raw(piece(x, y, piece, strip.height()));
        x += piece.width();
      }
      y += strip.height() + 6;
    }
    for (String line : wrapped(List.of(content.care()))) {
      y += LINE;
      svg.text("note", 0, y, line);
    }
    return document(content, strip, svg, (int) Math.ceil(y + LINE));
  }

  private static String document(PageContent content, Strip strip, Svg svg, int height) {
    String words =
        strip.pieces().stream().map(Piece::words).reduce("", (all, one) -> all + one + " ").strip();
    return """
        <svg xmlns="http://www.w3.org/2000/svg" class="strip ink" role="img" aria-labelledby="title desc" width="%d" height="%d" viewBox="-10 0 %d %d">
        <title id="title">%s</title>
        <desc id="desc">%s</desc>
        <style>svg{--ink:#111;--line:#666;--paper:#fff;--mark:#ffe9a8}%s.title{font-size:18px;font-weight:bold}.note{font-size:12px}</style>
        <rect class="paper" x="-10" width="100%%" height="100%%"/>
        <defs>%s</defs>
        """
            .formatted(
                WIDTH + 20,
                height,
                WIDTH + 20,
                height,
                Svg.escaped(content.title()),
                Svg.escaped(words),
                StaffStyle.sheet().replace("\n", ""),
                strip.shapes() + strip.heads())
        + svg
        + "\n</svg>\n";
  }

  /** A piece as a nested picture: its background and staff have its width. */
  private static String piece(double x, double y, Piece piece, int height) {
    return "<svg x=\"%s\" y=\"%s\" width=\"%d\" height=\"%d\" overflow=\"visible\">%s</svg>\n"
        .formatted(Svg.number(x), Svg.number(y), piece.width(), height, piece.body());
  }

  private static String group(double x, double y, String content) {
    return "<g transform=\"translate(%s,%s)\">%s</g>\n"
        .formatted(Svg.number(x), Svg.number(y), content);
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

  /** The legend, a line for each plan and one for the signs. */
  static List<String> legend(ImmutableList<Lane> lanes) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < lanes.size(); i++) {
      lines.add(
          "%s, %s the staff: %s"
              .formatted(lanes.get(i).key(), i == 0 ? "above" : "below", lanes.get(i).name()));
    }
    lines.add(
        "Numbers are fingers (0 open, T thumb), Roman numerals strings (I the highest) where they"
            + " change, labelled lines positions, arrows shifts."
            + (lanes.size() > 1 ? " Boxed: the plans differ." : "")
            + (any(lanes, "!") ? " !: outside the plan's positions." : "")
            + (any(lanes, "°") ? " °: natural harmonic." : "")
            + (any(lanes, "◇") ? " ◇: artificial harmonic, with the touching finger." : ""));
    return lines;
  }

  private static boolean any(ImmutableList<Lane> lanes, String sign) {
    return lanes.stream()
        .flatMap(lane -> lane.marks().values().stream())
        .anyMatch(mark -> mark.finger().contains(sign));
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
