package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.cli.Pages;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The layout of the strip, measured from the numbers in the picture. */
class StripLayoutTest {
  /** A phone of 360 pixels less the margins of the page (common practice, no source). */
  private static final int TELEPHONE = 360 - 24;

  private static final Pattern PIECE =
      Pattern.compile(
          "<div class=\"piece\"[^>]*><svg role=\"img\" width=\"(\\d+)\" height=\"(\\d+)\">"
              + "<title>([^<]*)</title>(.*?)</svg></div>");
  private static final Pattern TEXT =
      Pattern.compile("<text class=\"([a-z]+)\" x=\"([-0-9.]+)\" y=\"([-0-9.]+)\">([^<]*)</text>");
  private static final Pattern ROW =
      Pattern.compile("<text class=\"([a-z]+)\" y=\"([-0-9.]+)\" x=\"([-0-9. ]+)\">([^<]*)</text>");
  private static final Pattern MARGIN = Pattern.compile("padding-left:(\\d+)px");

  private static final Map<Pages, String> DRAWN = new ConcurrentHashMap<>();

  private static String html(Pages page) {
    return DRAWN.computeIfAbsent(page, Pages::html);
  }

  private record Letters(String kind, double x, double y, String words) {}

  private record Piece(int width, int height, String title, String drawing) {
    ImmutableList<Letters> texts() {
      ImmutableList.Builder<Letters> texts = ImmutableList.builder();
      Matcher text = TEXT.matcher(drawing);
      while (text.find()) {
        texts.add(
            new Letters(
                text.group(1),
                Double.parseDouble(text.group(2)),
                Double.parseDouble(text.group(3)),
                text.group(4)));
      }
      // Letters of one row are one text, each letter with its own place.
      Matcher row = ROW.matcher(drawing);
      while (row.find()) {
        String[] xs = row.group(3).split(" ", -1);
        for (int i = 0; i < xs.length; i++) {
          if ("!°".contains(row.group(4).substring(i, i + 1))) {
            continue; // a sign behind a finger
          }
          texts.add(
              new Letters(
                  row.group(1),
                  Double.parseDouble(xs[i]),
                  Double.parseDouble(row.group(2)),
                  row.group(4).substring(i, i + 1)));
        }
      }
      return texts.build();
    }
  }

  private static List<Piece> pieces(String html) {
    List<Piece> pieces = new ArrayList<>();
    Matcher piece = PIECE.matcher(html);
    while (piece.find()) {
      pieces.add(
          new Piece(
              Integer.parseInt(piece.group(1)),
              Integer.parseInt(piece.group(2)),
              piece.group(3),
              piece.group(4)));
    }
    assertThat(pieces).isNotEmpty();
    return pieces;
  }

  @ParameterizedTest
  @EnumSource
  void pieceWithItsClefFitsOnAPhoneAndHidesTheClefOfTheNext(Pages page) {
    String html = html(page);
    Matcher found = MARGIN.matcher(html);
    assertThat(found.find()).isTrue();
    int margin = Integer.parseInt(found.group(1));
    assertThat(pieces(html))
        .allSatisfy(piece -> assertThat(piece.width()).isBetween(margin, TELEPHONE - margin));
  }

  @ParameterizedTest
  @EnumSource
  void piecesHaveTheSameHeight(Pages page) {
    assertThat(pieces(html(page)).stream().map(Piece::height).distinct()).hasSize(1);
  }

  @ParameterizedTest
  @EnumSource
  void fingersOfARowAreInOrderAndDoNotOverlap(Pages page) {
    for (Piece piece : pieces(html(page))) {
      List<Letters> fingers =
          piece.texts().stream()
              .filter(text -> text.kind().equals("finger") || text.kind().equals("changed"))
              .toList();
      for (int i = 0; i < fingers.size(); i++) {
        for (int j = i + 1; j < fingers.size(); j++) {
          Letters one = fingers.get(i);
          Letters other = fingers.get(j);
          if (Math.abs(one.y() - other.y()) < 10) {
            double room = 6.5 * (one.words().length() + other.words().length()) / 2;
            assertThat(Math.abs(other.x() - one.x()))
                .as("%s and %s in %s", one.words(), other.words(), piece.title())
                .isGreaterThan(room);
          }
        }
      }
    }
  }

  // Every drawn finger is also in the words of its piece.
  @Test
  void musicIsInWordsForScreenReaders() {
    for (Piece piece : pieces(html(Pages.BASS))) {
      assertThat(piece.title()).startsWith("Measure ").endsWith(".");
      long fingers =
          piece.texts().stream()
              .filter(text -> text.kind().equals("finger") || text.kind().equals("changed"))
              .count();
      assertThat(Pattern.compile(": [IV0-4T]").matcher(piece.title()).results().count())
          .isEqualTo(fingers);
    }
    assertThat(pieces(html(Pages.DEMO)).stream().map(Piece::title))
        .contains("Measure 0; D4: all II 0; G4: A 3, B 1, C 2, D 3.")
        .anyMatch(words -> words.startsWith("Measure 17; G4: A 3, B 1, C 1 shift to 3rd"));
  }

  @ParameterizedTest
  @EnumSource
  void pageLoadsNothingFromOutside(Pages page) {
    assertThat(html(page))
        .doesNotContain("http:", "https:", "<script", "<link", "@import", "src=", "<iframe");
  }

  @Test
  void everyMeasureOfTheDemoAppearsOnce() {
    String html = html(Pages.DEMO);
    for (int measure = 0; measure <= 32; measure++) {
      assertThat(Pattern.compile(" id=\"m" + measure + "\"").matcher(html).results().count())
          .as("measure %d", measure)
          .isEqualTo(1);
    }
  }

  @Test
  void pictureIsAWellFormedDocumentWithTheWarning() throws Exception {
    for (Pages page : Pages.values()) {
      String svg = page.svg();
      DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
      assertThat(svg.replaceAll("</text>\\s*<text[^>]*>", " "))
          .contains("stop if it hurts", "the last word");
    }
  }
}
