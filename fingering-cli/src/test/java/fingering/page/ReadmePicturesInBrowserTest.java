package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.cli.Handouts;
import fingering.cli.Session;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/**
 * The pictures of the README: the page of plans on a screen and on a phone, and the handout. {@code
 * -Dpictures=write} takes them anew; otherwise the test compares their sizes, because other
 * machines have other fonts.
 */
class ReadmePicturesInBrowserTest extends InBrowser {
  private static final Path PICTURES = Path.of("..", "docs", "pictures");

  /** More ink than white paper has, less than a black picture. */
  private static final double LEAST_INK = 0.01;

  private static final double MOST_INK = 0.5;

  @Test
  void pageOnAScreen() throws Exception {
    browser().open(compared(), 1100);
    assertPicture("page.png", 1100, 1000);
  }

  @Test
  void pageOnAPhone() throws Exception {
    browser().open(compared(), 390);
    assertPicture("phone.png", 390, 1000);
  }

  @Test
  void handout() throws Exception {
    Browser shown = browser();
    // The width of A4 paper less its margins, at 96 pixels an inch.
    shown.open(Handouts.DEMO.in(folder, "a4"), 718);
    shown.media("print", "light");
    assertPicture("handout.png", 718, 1062);
  }

  private static Path compared() {
    Path page = folder.resolve("readme.html");
    Session.of("compare", Session.DEMO, "--format", "html", "--output", page).succeeded();
    return page;
  }

  private static void assertPicture(String name, int width, int height) throws Exception {
    ObjectNode clip =
        Browser.node().put("x", 0).put("y", 0).put("width", width).put("height", height);
    clip.put("scale", 1);
    ObjectNode parameters = Browser.node().put("format", "png").put("captureBeyondViewport", true);
    parameters.set("clip", clip);
    JsonNode shot = browser().send("Page.captureScreenshot", parameters);
    byte[] png = Base64.getDecoder().decode(shot.path("data").asText());
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
    assertThat(picture.getWidth()).isEqualTo(width);
    assertThat(picture.getHeight()).isEqualTo(height);
    assertThat(ink(picture)).isBetween(LEAST_INK, MOST_INK);
    if (System.getProperty("pictures", "").equals("write")) {
      Files.write(PICTURES.resolve(name), png);
    }
    BufferedImage committed = ImageIO.read(PICTURES.resolve(name).toFile());
    assertThat(committed.getWidth()).isEqualTo(width);
    assertThat(committed.getHeight()).isEqualTo(height);
  }

  /** The share of dark points. */
  private static double ink(BufferedImage picture) {
    long dark = 0;
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        dark += (picture.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
      }
    }
    return (double) dark / picture.getWidth() / picture.getHeight();
  }
}
