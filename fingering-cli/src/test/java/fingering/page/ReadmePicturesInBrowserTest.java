package fingering.page;

import fingering.cli.Handouts;
import fingering.cli.Session;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The pictures of the README: the page of plans on a screen and on a phone, and the handout. {@code
 * -Dpictures=write} takes them anew; otherwise the test compares their sizes, because other
 * machines have other fonts.
 */
class ReadmePicturesInBrowserTest extends InBrowser {
  @Test
  void pageOnAScreen() throws Exception {
    browser().open(compared(), 1100);
    Pictures.assertPicture(browser(), "page.png", 1100, 1000);
  }

  @Test
  void pageOnAPhone() throws Exception {
    browser().open(compared(), 390);
    Pictures.assertPicture(browser(), "phone.png", 390, 1000);
  }

  @Test
  void handout() throws Exception {
    Browser shown = browser();
    // The width of A4 paper less its margins, at 96 pixels an inch.
    shown.open(Handouts.DEMO.in(folder, "a4"), 718);
    shown.media("print", "light");
    Pictures.assertPicture(browser(), "handout.png", 718, 1062);
  }

  private static Path compared() {
    Path page = folder.resolve("readme.html");
    Session.of("compare", Session.DEMO, "--format", "html", "--output", page).succeeded();
    return page;
  }
}
