package fingering.musicxml;

import static fingering.musicxml.PrintedSnippet.START;
import static fingering.musicxml.PrintedSnippet.measure;
import static fingering.musicxml.PrintedSnippet.part;
import static fingering.musicxml.PrintedSnippet.quarter;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedMeasure.ClefChange;
import fingering.music.print.PrintedMeasure.InnerBar;
import fingering.music.print.PrintedMeasure.KeyChange;
import fingering.music.print.TimeSign;
import fingering.music.print.TimeSign.Symbol;
import fingering.music.print.TimeSign.Term;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Signatures and bar lines as printed, by the definitions of MusicXML 4.0 (from memory). */
class PrintedMeasuresTest {
  private static final String NOTE = quarter("");

  private static String time(String attributes, String content) {
    return "<attributes><divisions>1</divisions><time %s>%s</time></attributes>"
        .formatted(attributes, content);
  }

  private static List<TimeSign> times(String attributes, String content) {
    return measure(time(attributes, content) + NOTE).times().stream()
        .map(PrintedMeasure.TimeChange::sign)
        .toList();
  }

  private static String bar(String attributes, String content) {
    return "<barline " + attributes + ">" + content + "</barline>";
  }

  private static String style(String style) {
    return "<bar-style>" + style + "</bar-style>";
  }

  @Test
  void timeSignaturesAreReadAsPrinted() {
    String four = "<beats>4</beats><beat-type>4</beat-type>";
    assertThat(times("symbol=\"common\"", four))
        .containsExactly(new TimeSign(Symbol.COMMON, ImmutableList.of(new Term("4", 4))));
    assertThat(times("", "<beats>3+2</beats><beat-type>8</beat-type>"))
        .containsExactly(new TimeSign(Symbol.NUMBERS, ImmutableList.of(new Term("3+2", 8))));
    assertThat(times("", four + "<beats>1</beats><beat-type>8</beat-type>"))
        .extracting(TimeSign::terms)
        .containsExactly(ImmutableList.of(new Term("4", 4), new Term("1", 8)));
    assertThat(times("print-object=\"no\"", four)).isEmpty();
    assertThat(times("", "<beats>many</beats><beat-type>4</beat-type>")).isEmpty();
    assertThat(times("", "<senza-misura/>"))
        .containsExactly(new TimeSign(Symbol.SENZA_MISURA, ImmutableList.of()));
  }

  @Test
  void aMeasureHasATimeSignatureOnlyWhereOneIsPrinted() {
    List<PrintedMeasure> measures = part(START + NOTE, NOTE).measures();
    assertThat(measures.get(0).times()).hasSize(1);
    assertThat(measures.get(1).times()).isEmpty();
  }

  // Element cancel: the naturals of the old key are printed.
  @Test
  void aChangeOfKeyMayCancelTheOldOne() {
    PrintedMeasure second =
        part(
                "<attributes><divisions>1</divisions><key><fifths>3</fifths></key></attributes>"
                    + NOTE,
                "<attributes><key><cancel>3</cancel><fifths>0</fifths></key></attributes>" + NOTE)
            .measures()
            .get(1);
    assertThat(second.key()).contains(new KeyChange(BigFraction.ZERO, 3, 0, true));
    assertThat(second.keys()).isEmpty();
  }

  @Test
  void aClefAtTheEndOfAMeasureHoldsInTheNextOne() {
    String bass = "<attributes><clef><sign>F</sign><line>4</line></clef></attributes>";
    List<PrintedMeasure> measures = part(START + NOTE + bass, NOTE).measures();
    assertThat(measures.get(0).clefs()).containsExactly(new ClefChange(BigFraction.ONE, Clef.BASS));
    assertThat(measures.get(1).clef()).isEqualTo(Clef.BASS);
    assertThat(measures.get(1).clefAfterBar()).isFalse();
  }

  @Test
  void aClefMayFollowTheBarLine() {
    PrintedMeasure second =
        part(
                START + NOTE,
                "<attributes><clef after-barline=\"yes\"><sign>C</sign><line>3</line></clef>"
                    + "</attributes>"
                    + NOTE)
            .measures()
            .get(1);
    assertThat(second.clef()).isEqualTo(Clef.ALTO);
    assertThat(second.clefAfterBar()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "regular,SINGLE",
    "light-light,DOUBLE",
    "light-heavy,FINAL",
    "dashed,DASHED",
    "dotted,DOTTED",
    "tick,TICK",
    "short,SHORT",
    "none,NONE",
    "wavy,SINGLE"
  })
  void barLinesHaveTheirStyles(String style, Bar expected) {
    PrintedMeasure measure = measure(START + NOTE + bar("location=\"right\"", style(style)));
    assertThat(measure.end()).isEqualTo(expected);
  }

  @Test
  void aBarLineWithinAMeasureDoesNotEndIt() {
    PrintedMeasure measure =
        measure(START + NOTE + bar("location=\"middle\"", style("dashed")) + NOTE);
    assertThat(measure.bars()).containsExactly(new InnerBar(BigFraction.ONE, Bar.DASHED, false));
    assertThat(measure.end()).isEqualTo(Bar.SINGLE);
  }

  @Test
  void aBarLineAtTheLeftOfAMeasureEndsTheOneBefore() {
    List<PrintedMeasure> measures =
        part(START + NOTE, bar("location=\"left\"", style("light-light")) + NOTE).measures();
    assertThat(measures).extracting(PrintedMeasure::end).containsExactly(Bar.DOUBLE, Bar.SINGLE);
  }

  @Test
  void aBarLineMayHaveAFermata() {
    PrintedMeasure measure =
        measure(START + NOTE + bar("location=\"right\"", style("light-heavy") + "<fermata/>"));
    assertThat(measure.fermataAtEnd()).isTrue();
  }

  @Test
  void restsOfSeveralMeasuresAreCounted() {
    String style =
        "<attributes><measure-style><multiple-rest>2</multiple-rest></measure-style></attributes>";
    String rest = "<note><rest measure=\"yes\"/><duration>4</duration></note>";
    assertThat(part(START + NOTE, style + rest, rest).measures())
        .extracting(PrintedMeasure::multipleRest)
        .containsExactly(0, 2, 0);
  }

  @Test
  void aRepeatedMeasureIsPrintedAsItsNotes() {
    String style =
        "<attributes><measure-style><measure-repeat type=\"start\">1</measure-repeat>"
            + "</measure-style></attributes>";
    assertThat(part(START + NOTE, style + NOTE).measures().get(1).notes()).hasSize(1);
  }

  @Test
  void anImplicitMeasureHasNoNumber() {
    assertThat(part(START + NOTE).measures().get(0).numbered()).isTrue();
    String pickup = PrintedSnippet.xml("P1", START + NOTE);
    pickup = pickup.replace("<measure ", "<measure implicit=\"yes\" ");
    assertThat(PrintedSnippet.printed(PrintedSnippet.score(pickup), 1).measures().get(0).numbered())
        .isFalse();
  }
}
