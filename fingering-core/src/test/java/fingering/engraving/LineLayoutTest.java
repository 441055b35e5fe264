package fingering.engraving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Iterables;
import fingering.engraving.glyph.Box;
import fingering.engraving.ink.Ink;
import fingering.engraving.ink.Kind;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lines of music have the proportions that handbooks of engraving ask for (common practice; values
 * of SMuFL's engraving defaults, from memory).
 */
class LineLayoutTest {
  private static final String TWELVE =
      "X:1\nM:4/4\nL:1/4\nK:C\n" + "C D E F|G/F/E/D/ C2|".repeat(12) + "C4|]";

  private static ImmutableList<EngravedSystem> draw(String body, double width) {
    return Engraved.tune("X:1\nM:4/4\nL:1/4\nK:C\n" + body).draw(width);
  }

  private static List<Box> boxes(EngravedSystem system, Kind kind) {
    return system.inks().stream()
        .filter(ink -> ink.kind() == kind)
        .map(Ink::box)
        .sorted(Comparator.comparingDouble(Box::left))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {48, 80, 120, 160})
  void allLinesButTheLastEndAtTheRight(double width) {
    List<EngravedSystem> lines = Engraved.tune(TWELVE).draw(width);

    assertThat(lines.size()).isGreaterThan(2);
    for (EngravedSystem line : lines.subList(0, lines.size() - 1)) {
      assertThat(line.width()).isCloseTo(width, within(0.01));
      assertThat(Iterables.getLast(boxes(line, Kind.BAR_LINE)).right())
          .isCloseTo(width, within(0.01));
    }
    assertThat(Iterables.getLast(lines).width()).isLessThanOrEqualTo(width + 0.01);
  }

  /** A half note gets about 1.4 times the space of a quarter. */
  @Test
  void longNotesGetMoreSpaceButNotInProportion() {
    List<Box> heads = boxes(draw("C2 C C|C4|]", 160).get(0), Kind.HEAD);

    double half = heads.get(1).left() - heads.get(0).left();
    double quarter = heads.get(2).left() - heads.get(1).left();
    assertThat(half / quarter).isBetween(1.3, 1.5);
  }

  @ParameterizedTest
  @CsvSource({"C,,", "c'''"})
  void stemsOfNotesOnLedgerLinesReachTheMiddleLine(String note) {
    Box stem = boxes(draw(note + " z z2|]", 100).get(0), Kind.STEM).get(0);

    assertThat(stem.top()).isLessThanOrEqualTo(2.01);
    assertThat(stem.bottom()).isGreaterThanOrEqualTo(1.99);
  }

  /** Half a space a note, one and a quarter in all. */
  @ParameterizedTest
  @CsvSource({"'C/c/', 0.5", "'C/E/G/c/', 1.25", "'c/G/E/C/ c/G/E/C/', 1.25"})
  void beamsAreNotSteep(String notes, double most) {
    List<Box> beams = boxes(draw(notes + " z2|]", 100).get(0), Kind.BEAM);

    double top = beams.stream().mapToDouble(Box::top).min().orElseThrow();
    double bottom = beams.stream().mapToDouble(Box::bottom).max().orElseThrow();
    assertThat(bottom - top - 0.5).isBetween(0.0, most + 0.05);
  }

  @Test
  void anAccidentalStandsLeftOfItsHeadAndClearOfTheNoteBefore() {
    EngravedSystem line = draw("C/4^C/4D/4^D/4 E/4^E/4F/4^F/4 z2 |]", 30).get(0);

    List<Box> heads = boxes(line, Kind.HEAD);
    List<Box> signs = boxes(line, Kind.ACCIDENTAL);
    assertThat(signs).isNotEmpty();
    for (Box sign : signs) {
      assertThat(heads).noneMatch(head -> head.overlaps(sign));
      assertThat(heads)
          .anyMatch(head -> head.left() > sign.right() && head.left() < sign.right() + 1);
    }
  }

  @Test
  void aSlurOverABarLineIsOneArcAndOneOverALineBreakIsTwo() {
    EngravedSystem one = draw("C D E (F|G) F E D|]", 120).get(0);
    assertThat(gaps(boxes(one, Kind.SLUR))).isZero();

    List<EngravedSystem> lines =
        draw("C D E F|".repeat(7) + "C D (E F|G) F E D|".repeat(6) + "]", 60);
    long open =
        lines.stream()
            .filter(
                line ->
                    boxes(line, Kind.SLUR).stream()
                        .anyMatch(box -> box.right() > line.width() - 0.5))
            .count();
    long continued =
        lines.stream()
            .filter(line -> boxes(line, Kind.SLUR).stream().anyMatch(box -> box.left() < 8))
            .count();
    assertThat(open).isEqualTo(continued);
  }

  private static long gaps(List<Box> boxes) {
    long gaps = 0;
    for (int i = 1; i < boxes.size(); i++) {
      gaps += boxes.get(i).left() > boxes.get(i - 1).right() + 0.05 ? 1 : 0;
    }
    return gaps;
  }

  @Test
  void severalMeasuresOfRestAreOneSignWithTheirNumber() {
    EngravedSystem line = draw("C4|z4|z4|z4|C4|]", 120).get(0);

    assertThat(boxes(line, Kind.REST)).hasSize(1);
    assertThat(line.lastMeasure()).isEqualTo(4);
    assertThat(boxes(line, Kind.BAR_LINE).size()).isLessThan(6);
  }

  @Test
  void aMeasureWiderThanTheLineIsDividedAtABeat() {
    List<EngravedSystem> lines =
        draw("C/4D/4E/4F/4 G/4F/4E/4D/4 C/4D/4E/4F/4 G/4F/4E/4D/4|C4|]", 24);

    assertThat(lines.size()).isGreaterThan(1);
    assertThat(lines.get(0).lastMeasure()).isEqualTo(lines.get(1).firstMeasure());
    assertThat(lines).allMatch(line -> line.width() <= 24.01);
  }

  @Test
  void fingersStandAboveTheStaffAndTheOtherPlansBelow() {
    EngravedSystem line = Engraved.fingered(Engraved.tune(TWELVE)).draw(120).get(0);

    assertThat(boxes(line, Kind.FINGER)).anyMatch(box -> box.bottom() < 0);
    assertThat(boxes(line, Kind.FINGER)).anyMatch(box -> box.top() > 4);
    assertThat(boxes(line, Kind.FINGER)).noneMatch(box -> box.bottom() > 0 && box.top() < 4);
  }
}
