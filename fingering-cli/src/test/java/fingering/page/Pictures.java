package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import javax.imageio.ImageIO;

/**
 * Pictures of pages for the documentation. They are compared in size only, since other machines
 * have other fonts.
 */
final class Pictures {
  private static final Path PICTURES = Path.of("..", "docs", "pictures");

  /** More ink than white paper has, less than a black picture. */
  private static final double LEAST_INK = 0.01;

  private static final double MOST_INK = 0.5;

  private Pictures() {}

  static void assertPicture(Browser browser, String name, int width, int height) throws Exception {
    ObjectNode clip =
        Browser.node().put("x", 0).put("y", 0).put("width", width).put("height", height);
    clip.put("scale", 1);
    ObjectNode parameters = Browser.node().put("format", "png").put("captureBeyondViewport", true);
    parameters.set("clip", clip);
    JsonNode shot = browser.send("Page.captureScreenshot", parameters);
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
