package fingering.engraving;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fingering.engraving.glyph.Glyph;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/**
 * Draws the passages into a folder, named by -Dcompare, on one page beside those of a general
 * notation program, if one is installed as {@code mscore3}. To be looked at.
 */
class ComparedWithOtherEngraversTest {
  private static final double WIDTH = 100;
  private static final double PIXELS = 13;
  private static final int SECONDS = 60;

  private static final String STYLE =
      """
      body{margin:8px;background:#fff;font:16px sans-serif}svg{display:block;margin-bottom:13px}
      .staff{fill:none;stroke:#333;stroke-width:1.3}.stem{fill:none;stroke:#111;stroke-width:1.2}
      .ledger,.line,.hairpin{fill:none;stroke:#111;stroke-width:1.6}
      .curve{stroke:#111;stroke-width:1;stroke-linejoin:round}
      .dashes{fill:none;stroke:#111;stroke-width:1.6;stroke-dasharray:8 12}
      .words{font:italic 19px serif}.tempo,.rehearsal{font:bold 20px serif}
      .metronome{font:20px serif}.number{font:13px serif}.ending{font:15px serif}
      img{width:1300px}
      """;

  @Test
  void passagesBesideThoseOfANotationProgram() throws IOException, InterruptedException {
    String folder = System.getProperty("compare", "");
    assumeTrue(!folder.isEmpty(), "skipped: give a folder for the pictures with -Dcompare=FOLDER");
    Path out = Files.createDirectories(Path.of(folder));
    StringBuilder page =
        new StringBuilder("<!DOCTYPE html><meta charset=\"utf-8\"><title>Passages</title><style>")
            .append(STYLE)
            .append("</style>");
    for (String name : Passages.names()) {
      String plain = name.substring(0, name.lastIndexOf('.'));
      Path score = out.resolve(plain + ".musicxml");
      Files.writeString(score, Passages.musicXml(name), UTF_8);
      page.append("<h2>").append(plain).append("</h2>");
      picture(page, Passages.engraver(name).draw(WIDTH));
      if (other(score, out.resolve(plain + ".png"))) {
        page.append("<img alt=\"\" src=\"").append(plain).append("-1.png\">");
      }
    }
    Path index = out.resolve("index.html");
    Files.writeString(index, page.toString(), UTF_8);
    assertThat(index).isNotEmptyFile();
  }

  private static void picture(StringBuilder page, List<EngravedSystem> systems) {
    Set<Glyph> used = EnumSet.noneOf(Glyph.class);
    systems.forEach(system -> used.addAll(system.glyphs()));
    page.append("<svg width=\"0\" height=\"0\"><defs>");
    for (Glyph glyph : used) {
      page.append(
          "<path id=\"%s\" transform=\"scale(10)\" d=\"%s\"/>".formatted(glyph.id(), glyph.path()));
    }
    page.append("</defs></svg>");
    for (EngravedSystem system : systems) {
      page.append(
              String.format(
                  Locale.ROOT,
                  "<svg width=\"%.1f\" height=\"%.1f\" viewBox=\"0 %.1f %.1f %.1f\">",
                  system.width() * PIXELS,
                  system.height() * PIXELS,
                  system.top() * 10,
                  system.width() * 10,
                  system.height() * 10))
          .append(system.svg())
          .append("</svg>");
    }
  }

  /** Whether the other program drew it. */
  private static boolean other(Path score, Path picture) throws IOException, InterruptedException {
    ProcessBuilder program =
        new ProcessBuilder(
                "mscore3", "-r", "160", "-T", "20", "-o", picture.toString(), score.toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD);
    program.environment().put("QT_QPA_PLATFORM", "offscreen");
    try {
      Process running = program.start();
      return running.waitFor(SECONDS, TimeUnit.SECONDS) && running.exitValue() == 0;
    } catch (IOException e) {
      return false; // not installed
    }
  }
}
