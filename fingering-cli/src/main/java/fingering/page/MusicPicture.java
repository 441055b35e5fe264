package fingering.page;

import fingering.engraving.EngravedSystem;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.page.music.MusicWords;
import fingering.svg.Svg;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Collectors;

/** The music alone, as a picture that fits between the margins of A4 or Letter paper. */
public final class MusicPicture {
  private static final double WIDTH = 700;

  /** Pixels in a staff space. */
  private static final double SPACE = 7;

  private static final int LINE = 17;
  private static final int MARGIN = 10;
  private static final double LETTERS = 12;
  private static final String SHEET =
      "svg{--ink:#111;--line:#111;--paper:#fff;--b:#8a3b00;--c:#2f5d0e;--ring:#b00020}";

  private MusicPicture() {}

  /** Draws the music of a page's plans. */
  public static String of(PageContent content) {
    Lanes lanes = Lanes.of(content.main(), content.rival());
    MusicPanel panel = new MusicPanel(content.comparison().passage(), content.printed(), lanes);
    MusicWords words = new MusicWords(content.comparison().passage(), content.printed(), lanes);
    List<EngravedSystem> lines = panel.lines(WIDTH / SPACE);
    Svg svg = new Svg();
    double y = 24;
    svg.text("title", 0, 20, content.title());
    List<String> notes = new ArrayList<>(content.about().subList(0, 1));
    notes.addAll(lanes.key());
    notes.add(lanes.signs());
    for (String line : wrapped(notes)) {
      y += LINE;
      svg.text("note", 0, y, line);
    }
    y += LINE;
    double scale = SPACE / Canvas.UNIT;
    for (EngravedSystem line : lines) {
      double down = y - MusicPanel.top(line) * SPACE;
      svg.raw("<g transform=\"translate(0,%s) scale(%s)\">".formatted(Svg.number(down), scale))
          .raw(line.svg())
          .raw("</g>");
      y += (MusicPanel.bottom(line) - MusicPanel.top(line)) * SPACE;
    }
    for (String line : wrapped(List.of(content.care()))) {
      y += LINE;
      svg.text("note", 0, y, line);
    }
    return svg.file(
        "music",
        (int) WIDTH,
        (int) Math.ceil(y + LINE),
        MARGIN,
        content.title(),
        lines.stream().map(words::of).collect(Collectors.joining(" ")),
        SHEET + PageStyle.music().replace("\n", ""),
        MusicPanel.shapes(lines, EnumSet.noneOf(Glyph.class)));
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
