package fingering.page;

import com.google.common.io.Resources;
import fingering.page.view.Paper;
import fingering.page.view.Templates;
import fingering.svg.Svg;
import gg.jte.Content;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheet of all pages: light and dark, narrow and wide, screen and paper. */
final class PageStyle {

  private PageStyle() {}

  static Content sheet() {
    return Templates.elements(read("page.css") + music());
  }

  /**
   * The style sheet of a handout, on paper of a size.
   *
   * @param below the white below a line of music, in millimetres
   * @param belowExercise the same of an exercise
   */
  static Content handout(Paper paper, String below, String belowExercise) {
    return Templates.elements(
        "@page{size:%s portrait;margin:%smm}:root{--wide:%smm;--high:%smm;--below:%smm;--exercise:%smm}"
                .formatted(
                    paper.style(),
                    Svg.number(Paper.MARGIN),
                    Svg.number(paper.width()),
                    Svg.number(paper.height()),
                    below,
                    belowExercise)
            + read("handout.css")
            + music());
  }

  /** The style sheet of the pages of the local server. */
  static String live() {
    return read("page.css") + music() + read("player.css") + read("live.css");
  }

  /** The style sheet of the file for a student. */
  static Content gift() {
    return Templates.elements(read("page.css") + music() + read("player.css") + read("gift.css"));
  }

  /** The scripts of the file for a student: they unpack and play the music, and keep the ticks. */
  static String player() {
    return read("unpack.js") + read("player.js") + read("ticks.js");
  }

  /** The style of drawn music. */
  static String music() {
    return read("music.css");
  }

  private static String read(String file) {
    try {
      return Resources.toString(
          Resources.getResource(PageStyle.class, "/fingering/page/" + file),
          StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
