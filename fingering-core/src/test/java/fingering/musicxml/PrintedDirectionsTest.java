package fingering.musicxml;

import static fingering.musicxml.PrintedSnippet.START;
import static fingering.musicxml.PrintedSnippet.direction;
import static fingering.musicxml.PrintedSnippet.measure;
import static fingering.musicxml.PrintedSnippet.part;
import static fingering.musicxml.PrintedSnippet.quarter;
import static fingering.musicxml.PrintedSnippet.score;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fingering.music.print.PrintedNote.Value;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.OctaveLine;
import fingering.music.print.PrintedPart.TextLine;
import fingering.music.print.PrintedPart.Wedge;
import fingering.music.print.PrintedText;
import fingering.music.print.PrintedText.Kind;
import fingering.music.print.PrintedText.Metronome;
import fingering.music.print.PrintedText.Style;
import fingering.music.print.Side;
import fingering.musicxml.reading.Score;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Words, tempo marks and lines as printed, by the definitions of MusicXML 4.0 (from memory). */
class PrintedDirectionsTest {
  private static final String NOTE = quarter("");
  private static final String ABOVE = "placement=\"above\"";

  private static String metronome(String attributes, String content) {
    return "<metronome " + attributes + ">" + content + "</metronome>";
  }

  private static final String DOTTED_QUARTER_96 =
      "<beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>c. 96</per-minute>";

  @Test
  void wordsAndMetronomeMarkOfADirectionStandOnOneLine() {
    List<PrintedText> texts =
        measure(
                START
                    + direction(
                        ABOVE,
                        "<words font-weight=\"bold\">Vivace</words>",
                        metronome("parentheses=\"yes\"", DOTTED_QUARTER_96),
                        "<words>sempre</words>")
                    + direction("placement=\"below\"", "<words font-style=\"italic\">dolce</words>")
                    + NOTE)
            .texts();
    assertThat(texts)
        .extracting(PrintedText::kind, PrintedText::text, PrintedText::direction, PrintedText::side)
        .containsExactly(
            tuple(Kind.WORDS, "Vivace", 0, Side.ABOVE),
            tuple(Kind.TEMPO, "dotted-quarter=96", 0, Side.ABOVE),
            tuple(Kind.WORDS, "sempre", 0, Side.ABOVE),
            tuple(Kind.WORDS, "dolce", 1, Side.BELOW));
    assertThat(texts.get(0).style()).isEqualTo(new Style(true, false, false));
    assertThat(texts.get(3).style()).isEqualTo(new Style(false, true, false));
    assertThat(texts.get(1).metronome())
        .contains(new Metronome(new Value(4, 1, false), "c. 96", true));
  }

  @Test
  void aHiddenMetronomeMarkIsNotPrinted() {
    assertThat(
            measure(
                    START
                        + direction(ABOVE, metronome("print-object=\"no\"", DOTTED_QUARTER_96))
                        + NOTE)
                .texts())
        .isEmpty();
  }

  @Test
  void rehearsalMarksAreTextsOfTheirOwn() {
    PrintedText mark =
        measure(START + direction(ABOVE, "<rehearsal enclosure=\"square\">B</rehearsal>") + NOTE)
            .texts()
            .get(0);
    assertThat(mark.kind()).isEqualTo(Kind.REHEARSAL);
    assertThat(mark.text()).isEqualTo("B");
    assertThat(mark.style().boxed()).isTrue();
  }

  // Element offset: it moves what is printed.
  @Test
  void anOffsetMovesWhatIsPrintedButNotBeyondTheMeasure() {
    String moved =
        "<direction><direction-type><words>poco</words></direction-type><offset>%d</offset>"
            + "</direction>";
    assertThat(measure(START + moved.formatted(1) + moved.formatted(9) + NOTE + NOTE).texts())
        .extracting(PrintedText::start)
        .containsExactly(BigFraction.ONE, BigFraction.of(2));
  }

  @Test
  void dashesFollowTheWordsOfTheirDirection() {
    PrintedPart part =
        part(
            START
                + direction(ABOVE, "<words>rit.</words>")
                + NOTE
                + direction(
                    "placement=\"below\"",
                    "<words>cresc.</words>",
                    "<dashes type=\"start\" number=\"1\"/>")
                + NOTE,
            NOTE + direction("", "<dashes type=\"stop\" number=\"1\"/>"));
    assertThat(part.textLines())
        .extracting(
            TextLine::style, TextLine::start, TextLine::end, TextLine::direction, TextLine::side)
        .containsExactly(
            tuple(TextLine.Style.DASHES, BigFraction.ONE, BigFraction.of(3), 1, Side.BELOW));
  }

  @Test
  void bracketsMayHaveHooks() {
    PrintedPart part =
        part(
            START
                + direction(
                    ABOVE, "<bracket type=\"start\" line-end=\"none\" line-type=\"dotted\"/>")
                + NOTE
                + direction("", "<bracket type=\"stop\" line-end=\"down\"/>"));
    assertThat(part.textLines())
        .extracting(TextLine::style, TextLine::startHook, TextLine::endHook)
        .containsExactly(tuple(TextLine.Style.DOTTED, false, true));
  }

  @Test
  void hairpinsHaveASide() {
    PrintedPart part =
        part(
            START
                + direction(ABOVE, "<wedge type=\"crescendo\"/>")
                + NOTE
                + direction("", "<wedge type=\"stop\"/>"));
    assertThat(part.wedges()).extracting(Wedge::side).containsExactly(Side.ABOVE);
  }

  // A later voice goes back in time, so that the start of its hairpin can follow the end in a file.
  @Test
  void aHairpinWhoseEndComesFirstInTheFileEndsInItsMeasure() {
    PrintedPart part =
        part(
            START
                + NOTE
                + direction("", "<wedge type=\"stop\"/>")
                + NOTE
                + "<backup><duration>2</duration></backup>"
                + direction("", "<wedge type=\"crescendo\"/>")
                + NOTE
                + NOTE,
            NOTE + NOTE + direction("", "<wedge type=\"stop\"/>"));
    assertThat(part.wedges()).extracting(Wedge::end).containsExactly(BigFraction.of(1));
  }

  // Element octave-shift: the pitches of the file are those that sound, and 8va has the type down.
  @Test
  void notesUnderAnOctaveLineArePrintedLower() {
    PrintedPart part =
        part(
            START
                + NOTE
                + direction(ABOVE, "<octave-shift type=\"down\" size=\"8\"/>")
                + NOTE
                + direction("", "<octave-shift type=\"stop\" size=\"8\"/>")
                + NOTE);
    assertThat(part.octaveLines())
        .extracting(OctaveLine::start, OctaveLine::end, OctaveLine::octaves)
        .containsExactly(tuple(BigFraction.ONE, BigFraction.of(2), 1));
    assertThat(part.octavesAt(BigFraction.ZERO)).isZero();
    assertThat(part.octavesAt(BigFraction.ONE)).isEqualTo(1);
    assertThat(part.octavesAt(BigFraction.of(2))).isZero();
  }

  // Scores print tempo and rehearsal marks once, above the top part (common practice).
  @Test
  void aPlayerSeesTheTempoMarksOfTheTopPart() {
    String tempo =
        direction(
            ABOVE,
            "<words>Vivace</words>",
            metronome("", "<beat-unit>half</beat-unit><per-minute>80</per-minute>"));
    String own = direction("placement=\"below\"", "<words>dolce</words>");
    Score score =
        score(
            PrintedSnippet.xml(
                "P1", START + tempo + own + direction(ABOVE, "<words>Adagio</words>") + NOTE),
            PrintedSnippet.xml(
                "P2",
                START
                    + direction(ABOVE, "<words>pizz.</words>", "<words>con sord.</words>")
                    + direction(ABOVE, "<words>Adagio</words>")
                    + NOTE));
    assertThat(PrintedSnippet.printed(score, 2).texts())
        .extracting(PrintedText::text, PrintedText::direction)
        .containsExactly(
            tuple("Vivace", -1),
            tuple("half=80", -1),
            tuple("pizz. con sord.", 0),
            tuple("Adagio", 1));
    assertThat(PrintedSnippet.printed(score, 1).texts())
        .extracting(PrintedText::text)
        .containsExactly("Vivace", "half=80", "dolce", "Adagio");
  }
}
