package fingering.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;

/**
 * Mouse and keyboard of a browser.
 *
 * @param browser the browser
 */
record Hands(Browser browser) {
  static final int CONTROL = 2;
  static final int SHIFT = 8;

  private static final int STEPS = 5;

  private static final int LOOKS = 100;

  private static final String TWO_FRAMES =
      "new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(0))))";

  /** A point of the window in pixels. */
  private record Point(double x, double y) {}

  /**
   * Clicks in the middle of an element, which is scrolled into view first. Waits until the page has
   * loaded what it asked for and the element stays in its place, as a person would.
   */
  void click(String selector) throws Exception {
    Point before = new Point(-1, -1);
    Point at = middle(selector, true);
    for (int left = LOOKS; !at.equals(before); left--) {
      if (left == 0) {
        throw new IOException("never stays in its place: " + selector);
      }
      browser.awaitQuiet();
      browser.run(TWO_FRAMES);
      before = at;
      at = middle(selector, false);
    }
    mouse("mousePressed", at);
    mouse("mouseReleased", at);
  }

  /** Presses on one element and lets go on another one near it. */
  void drag(String from, String to) throws Exception {
    Point start = middle(from, true);
    Point end = middle(to, false);
    mouse("mousePressed", start);
    for (int step = 1; step <= STEPS; step++) {
      double part = (double) step / STEPS;
      mouse(
          "mouseMoved",
          new Point(
              start.x() + (end.x() - start.x()) * part, start.y() + (end.y() - start.y()) * part));
    }
    mouse("mouseReleased", end);
  }

  /**
   * Presses a key.
   *
   * @param key what it means
   * @param code where it is on the keyboard
   * @param modifiers {@link #CONTROL}, {@link #SHIFT}, their sum, or 0
   */
  void key(String key, String code, int modifiers) throws Exception {
    for (String type : new String[] {"keyDown", "keyUp"}) {
      browser.send(
          "Input.dispatchKeyEvent",
          Browser.node()
              .put("type", type)
              .put("key", key)
              .put("code", code)
              .put("modifiers", modifiers));
    }
  }

  private Point middle(String selector, boolean scroll) throws Exception {
    JsonNode at =
        browser.run(
            ("(() => {const element = document.querySelector('%s'); if (%s)"
                    + " element.scrollIntoView({block: 'center'}); const box ="
                    + " element.getBoundingClientRect(); return JSON.stringify({x: box.x +"
                    + " box.width / 2, y: box.y + box.height / 2})})()")
                .formatted(selector, scroll));
    return new Point(at.path("x").asDouble(), at.path("y").asDouble());
  }

  private void mouse(String type, Point at) throws Exception {
    browser.send(
        "Input.dispatchMouseEvent",
        Browser.node()
            .put("type", type)
            .put("x", at.x())
            .put("y", at.y())
            .put("button", "left")
            .put("buttons", type.equals("mouseReleased") ? 0 : 1)
            .put("clickCount", 1));
  }
}
