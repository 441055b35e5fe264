package fingering.page;

import com.google.common.io.Resources;
import fingering.page.staff.StaffStyle;
import gg.jte.Content;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheet of all pages: light and dark, narrow and wide, screen and paper. */
final class PageStyle {
  private static final String FILE = "/fingering/page/page.css";

  private PageStyle() {}

  static Content sheet() {
    try {
      String sheet =
          Resources.toString(Resources.getResource(PageStyle.class, FILE), StandardCharsets.UTF_8);
      return Templates.elements(sheet + StaffStyle.sheet());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
