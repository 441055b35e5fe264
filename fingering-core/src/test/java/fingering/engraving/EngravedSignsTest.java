package fingering.engraving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableSet;
import fingering.engraving.drawing.Circled;
import fingering.engraving.glyph.Box;
import fingering.engraving.ink.Ink;
import fingering.engraving.ink.Kind;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Slurs, rests, words, repeats and octave lines stand where printed music has them. */
class EngravedSignsTest {
  private static List<EngravedSystem> draw(String body, double width) {
    return Engraved.tune("X:1\nM:4/4\nL:1/4\nK:C\n" + body).draw(width);
  }

  private static List<Box> boxes(EngravedSystem system, Kind kind) {
    return system.inks().stream()
        .filter(ink -> ink.kind() == kind)
        .map(Ink::box)
        .sorted(Comparator.comparingDouble(Box::left))
        .toList();
  }

  private static double top(List<Box> boxes) {
    return boxes.stream().mapToDouble(Box::top).min().orElseThrow();
  }

  private static double bottom(List<Box> boxes) {
    return boxes.stream().mapToDouble(Box::bottom).max().orElseThrow();
  }

  @Test
  void theStaffIsBehindTheHeads() {
    String picture = draw("B4|]", 100).get(0).svg();

    assertThat(picture.indexOf("class=\"staff\"")).isBetween(0, picture.indexOf("<use"));
  }

  @Test
  void aDotUnderASlurStandsInASpaceOfTheStaff() {
    List<Box> dots = boxes(draw("(.B .c) z2|]", 100).get(0), Kind.ARTICULATION);

    // B is on the middle line and c in the space above; dots stand in the next free spaces.
    assertThat((dots.get(0).top() + dots.get(0).bottom()) / 2).isCloseTo(0.5, within(0.05));
    assertThat((dots.get(1).top() + dots.get(1).bottom()) / 2).isCloseTo(0.5, within(0.05));
  }

  /** The head of B is on the middle line; the top line is above the start of its slur. */
  @Test
  void aSlurBeginsAtAHeadWithinTheStaff() {
    List<Box> slur = boxes(draw("(B d2) z|]", 100).get(0), Kind.SLUR);

    assertThat(slur.get(0).top()).isBetween(0.5, 1.5);
  }

  /** Their order must not depend on how the computer stores them: a picture stays the same. */
  @Test
  void tiesThatGoOnInTheNextLineAreDrawnInTheOrderOfTheirNotes() {
    List<Box> ties =
        draw("[C-E-G-c-e-g-]4|[CEGceg]4|]", 14).get(0).inks().stream()
            .filter(ink -> ink.kind() == Kind.TIE)
            .map(Ink::box)
            .toList();
    List<Double> begins =
        ties.stream().filter(box -> box.left() == ties.get(0).left()).map(Box::top).toList();

    assertThat(begins).hasSize(6).isSortedAccordingTo(Comparator.reverseOrder());
  }

  @Test
  void aSlurFromALowToAHighNoteIsNoStroke() {
    List<Box> slur = boxes(draw("(G,/4b/4) z3/2 z2|]", 100).get(0), Kind.SLUR);
    double width = slur.get(slur.size() - 1).right() - slur.get(0).left();

    assertThat(bottom(slur) - top(slur)).isLessThan(2.2 * width + 1);
  }

  @Test
  void aSmallSlurFromGraceNotesHangsAtTheHeads() {
    EngravedSystem line = draw("({fg}a2) z2|]", 100).get(0);

    // The stem of the main note reaches down to 3; the slur stays at the heads.
    assertThat(bottom(boxes(line, Kind.SLUR))).isLessThan(2);
  }

  @Test
  void restsOfOneOfTwoVoicesAreNotInTheMiddle() {
    List<EngravedSystem> lines = Passages.engraver("11-two-voices.musicxml").draw(100);

    // The last line begins in measure 7 or before; measure 9 has a rest alone in its column.
    List<Box> rests =
        lines.stream()
            .flatMap(line -> line.inks().stream())
            .filter(ink -> ink.kind() == Kind.REST && Math.abs(ink.time() - 25.5) < 0.01)
            .map(Ink::box)
            .toList();
    assertThat(rests).hasSize(1);
    assertThat((rests.get(0).top() + rests.get(0).bottom()) / 2).isLessThan(1);
  }

  @Test
  void notesUnderAnOctaveLineArePrintedAnOctaveLower() {
    List<EngravedSystem> lines = Passages.engraver("12-octave-line.musicxml").draw(100);

    for (EngravedSystem line : lines) {
      assertThat(top(boxes(line, Kind.HEAD))).isGreaterThan(-4);
      assertThat(top(boxes(line, Kind.WORDS))).isLessThan(top(boxes(line, Kind.HEAD)));
    }
  }

  @Test
  void theLastLineIsJustifiedIfItIsNearlyFull() {
    EngravedSystem natural = draw("C D E F|G F E D|C D E F|G F E D|]", 200).get(0);
    double width = natural.width() * 1.1;

    List<EngravedSystem> full = draw("C D E F|G F E D|C D E F|G F E D|]", width);
    List<EngravedSystem> half = draw("C D E F|G F E D|C D E F|G F E D|]", natural.width() * 2);
    assertThat(full).hasSize(1);
    assertThat(full.get(0).width()).isCloseTo(width, within(0.01));
    assertThat(half.get(0).width()).isCloseTo(natural.width(), within(0.01));
  }

  /** A thick and a thin line and two dots: no double bar line before them. */
  @Test
  void theStartOfARepeatReplacesTheBarLineBefore() {
    List<Box> single = boxes(draw("C4|D4|]", 100).get(0), Kind.BAR_LINE);
    List<Box> repeat = boxes(draw("C4|\\\n|:D4|]", 100).get(0), Kind.BAR_LINE);
    List<Box> twice = boxes(draw("C4||\\\n|:D4|]", 100).get(0), Kind.BAR_LINE);

    assertThat(repeat).hasSize(single.size() + 3);
    assertThat(twice).hasSize(single.size() + 3);
  }

  @Test
  void wordsOfNeighbouringMeasuresAreOneRow() {
    List<Box> words =
        boxes(
            draw("\"^con sordino\"C4|\"^senza sordino\"D4|\"^pizz.\"E4|]", 100).get(0), Kind.WORDS);

    assertThat(words).hasSize(3);
    assertThat(words).allMatch(box -> Math.abs(box.top() - words.get(0).top()) < 0.01);
  }

  @Test
  void wordsAreNearerToTheirNoteThanTheTempo() {
    EngravedSystem line =
        Engraved.tune("X:1\nM:2/4\nL:1/4\nQ:\"Allegro\" 1/4=100\nK:C\n\"^pizz.\"C D|]")
            .draw(80)
            .get(0);

    assertThat(top(boxes(line, Kind.WORDS))).isGreaterThan(bottom(boxes(line, Kind.TEMPO)) - 0.7);
    assertThat(boxes(line, Kind.WORDS).get(0).left())
        .isCloseTo(boxes(line, Kind.HEAD).get(0).left(), within(0.5));
  }

  @Test
  void oneLowNoteDoesNotTakeDynamicsFarAwayDown() {
    EngravedSystem line = draw("!p!c4|c4|c4|c4|c4|c4|!f!C,,4|]", 130).get(0);
    List<Box> dynamics = boxes(line, Kind.DYNAMIC);

    assertThat(dynamics.get(0).bottom()).isLessThan(dynamics.get(1).top());
  }

  @Test
  void onlyTheStartOfALongHairpinIsRinged() {
    Engraver bare = Engraved.tune("X:1\nM:4/4\nL:1/4\nK:C\n!<(!C D E F|G A B c!<)!|]");
    EngravedSystem line =
        bare.withCircles(List.of(new Circled(0, ImmutableSet.of(Kind.HAIRPIN)))).draw(100).get(0);

    assertThat(boxes(line, Kind.CIRCLE)).hasSize(1);
    assertThat(boxes(line, Kind.CIRCLE).get(0).width()).isLessThan(8);
    assertThat(boxes(line, Kind.HAIRPIN).get(0).width()).isGreaterThan(15);
  }

  @Test
  void fingersOfTheSecondPlanGetNoRing() {
    Engraver bare = Engraved.fingered(Engraved.tune("X:1\nM:4/4\nL:1/4\nK:C\nC D E F|]"));
    EngravedSystem line =
        bare.withCircles(List.of(new Circled(0, ImmutableSet.of(Kind.FINGER)))).draw(100).get(0);

    assertThat(boxes(line, Kind.FINGER)).anyMatch(finger -> finger.top() > 4);
    assertThat(boxes(line, Kind.CIRCLE)).hasSize(1).allMatch(ring -> ring.bottom() < 2);
  }
}
