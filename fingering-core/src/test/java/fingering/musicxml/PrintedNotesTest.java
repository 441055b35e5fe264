package fingering.musicxml;

import static fingering.musicxml.PrintedSnippet.START;
import static fingering.musicxml.PrintedSnippet.notations;
import static fingering.musicxml.PrintedSnippet.notes;
import static fingering.musicxml.PrintedSnippet.part;
import static fingering.musicxml.PrintedSnippet.pitched;
import static fingering.musicxml.PrintedSnippet.quarter;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fingering.music.NoteAddress;
import fingering.music.print.Accidental;
import fingering.music.print.NoteShape;
import fingering.music.print.NoteShape.Beam;
import fingering.music.print.NoteShape.Head;
import fingering.music.print.NoteShape.Stem;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.OrnamentAccidental;
import fingering.music.print.PrintedNote.Sign;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.NoteLine;
import fingering.music.print.PrintedPart.Slur;
import fingering.music.print.PrintedPart.Tuplet;
import fingering.music.print.PrintedPart.Tuplet.Numbers;
import fingering.music.print.Side;
import fingering.tables.Pitch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How notes are printed, by the definitions of MusicXML 4.0 (from memory). */
class PrintedNotesTest {
  private static NoteAddress at(int measure, int note) {
    return new NoteAddress(0, measure, note);
  }

  private static PrintedNote only(String after) {
    return notes(START + quarter(after)).get(0);
  }

  private static PrintedNote signed(String notation) {
    return only(notations(notation));
  }

  // Elements stem, notehead and beam.
  @Test
  void stemsNoteheadsAndAllBeamsAreRead() {
    List<NoteShape> shapes =
        notes(
                START
                    + quarter(
                        "<stem>up</stem><beam number=\"1\">begin</beam><beam number=\"2\">forward"
                            + " hook</beam>")
                    + quarter(
                        "<stem>down</stem><notehead>diamond</notehead><beam"
                            + " number=\"1\">end</beam>")
                    + quarter("<stem>none</stem><notehead>x</notehead>")
                    + quarter("<stem>sideways</stem><beam number=\"1\">broken</beam>"))
            .stream()
            .map(PrintedNote::shape)
            .toList();
    assertThat(shapes)
        .extracting(NoteShape::stem)
        .containsExactly(Stem.UP, Stem.DOWN, Stem.NONE, Stem.AUTO);
    assertThat(shapes)
        .extracting(NoteShape::head)
        .containsExactly(Head.NORMAL, Head.DIAMOND, Head.NORMAL, Head.NORMAL);
    assertThat(shapes.get(0).beams()).containsExactly(Beam.BEGIN, Beam.FORWARD_HOOK);
    assertThat(shapes.get(0).beam()).isEqualTo(Beam.BEGIN);
    assertThat(shapes.get(1).beams()).containsExactly(Beam.END);
    assertThat(shapes.get(3).beams()).isEmpty();
  }

  @Test
  void graceNotesHaveBeamsAndSomeAreSlashed() {
    List<PrintedNote> notes =
        notes(
            START
                + "<note><grace slash=\"yes\"/>"
                + pitched("B", 4)
                + "</note><note><grace/>"
                + pitched("C", 5)
                + "<beam number=\"1\">begin</beam></note>"
                + quarter(""));
    assertThat(notes).extracting(n -> n.shape().slashed()).containsExactly(true, false, false);
    assertThat(notes.get(1).shape().beam()).isEqualTo(Beam.BEGIN);
  }

  // Attributes cautionary and parentheses of the element accidental.
  @Test
  void accidentalsMayBeCourtesyOrInParentheses() {
    assertThat(only("<accidental cautionary=\"yes\">natural</accidental>").accidental())
        .contains(new Accidental(Accidental.Kind.NATURAL, true, false));
    assertThat(only("<accidental parentheses=\"yes\">flat-flat</accidental>").accidental())
        .contains(new Accidental(Accidental.Kind.DOUBLE_FLAT, false, true));
    assertThat(only("<accidental>natural-sharp</accidental>").accidental())
        .contains(new Accidental(Accidental.Kind.NATURAL_SHARP, false, false));
    assertThat(only("<accidental>quarter-flat</accidental>").accidental()).isEmpty();
  }

  // Spiccato is drawn as a stroke; detached-legato is a stroke and a dot.
  @Test
  void articulationsHaveTheirSigns() {
    assertThat(signed("<articulations><spiccato/></articulations>").signs().keySet())
        .containsExactly(Sign.STACCATISSIMO);
    assertThat(signed("<articulations><detached-legato/></articulations>").signs().keySet())
        .containsExactly(Sign.STACCATO, Sign.TENUTO);
    assertThat(
            signed(
                    "<articulations><strong-accent placement=\"below\"/><soft-accent/><breath-mark/>"
                        + "<caesura/></articulations>")
                .signs())
        .containsEntry(Sign.MARCATO, Side.BELOW)
        .containsEntry(Sign.SOFT_ACCENT, Side.AUTO)
        .containsKeys(Sign.BREATH, Sign.CAESURA);
  }

  // An inverted mordent is the sign of a short trill, without the vertical stroke.
  @Test
  void ornamentsHaveTheirSignsAndAccidentals() {
    PrintedNote turn =
        signed(
            "<ornaments><inverted-turn placement=\"above\"/><accidental-mark"
                + " placement=\"below\">sharp</accidental-mark></ornaments>");
    assertThat(turn.signs()).containsExactly(entry(Sign.INVERTED_TURN, Side.ABOVE));
    assertThat(turn.ornamentAccidentals())
        .containsExactly(
            new OrnamentAccidental(
                new Accidental(Accidental.Kind.SHARP, false, false), Side.BELOW));
    assertThat(
            signed("<ornaments><mordent/></ornaments><ornaments><inverted-mordent/></ornaments>")
                .signs()
                .keySet())
        .containsExactly(Sign.MORDENT, Sign.SHORT_TRILL);
  }

  @Test
  void fermatasArpeggiosAndSnapsHaveTheirSigns() {
    assertThat(signed("<fermata type=\"inverted\"/>").signs())
        .containsEntry(Sign.INVERTED_FERMATA, Side.BELOW);
    assertThat(signed("<fermata/>").has(Sign.FERMATA)).isTrue();
    assertThat(signed("<arpeggiate/>").has(Sign.ARPEGGIO)).isTrue();
    assertThat(signed("<arpeggiate direction=\"down\"/>").has(Sign.ARPEGGIO_DOWN)).isTrue();
    assertThat(signed("<technical><snap-pizzicato/></technical>").has(Sign.SNAP_PIZZICATO))
        .isTrue();
  }

  @Test
  void onlyHarmonicsWithoutADiamondHaveACircle() {
    String natural = notations("<technical><harmonic><natural/></harmonic></technical>");
    assertThat(only(natural).has(Sign.HARMONIC)).isTrue();
    assertThat(only("<notehead>diamond</notehead>" + natural).has(Sign.HARMONIC)).isFalse();
    assertThat(
            signed("<technical><harmonic><artificial/><base-pitch/></harmonic></technical>")
                .has(Sign.HARMONIC))
        .isFalse();
  }

  @Test
  void aRestMayStandElsewhere() {
    PrintedNote rest =
        notes(
                START
                    + "<note><rest><display-step>G</display-step><display-octave>5</display-octave>"
                    + "</rest><duration>1</duration></note>"
                    + quarter(""))
            .get(0);
    assertThat(rest.restAt()).contains(Pitch.parse("G5"));
    assertThat(rest.rest()).isTrue();
  }

  private static String tuplet(String attributes, String content) {
    return notations("<tuplet " + attributes + ">" + content + "</tuplet>");
  }

  private static final String THREE_TWO =
      "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes>"
          + "</time-modification>";

  // Element tuplet: show-number is actual by default; the numbers are those of the time
  // modification unless the tuplet states its own.
  @Test
  void tupletsHaveNumbersAndBrackets() {
    PrintedPart part =
        part(
            START
                + quarter(THREE_TWO + tuplet("type=\"start\" bracket=\"no\"", ""))
                + quarter(THREE_TWO)
                + quarter(THREE_TWO + tuplet("type=\"stop\"", "")));
    assertThat(part.tuplets())
        .containsExactly(
            new Tuplet(at(0, 0), at(0, 2), 3, 2, Optional.of(false), Numbers.ACTUAL, Side.AUTO));
  }

  @Test
  void tupletsMayBeNested() {
    String inner =
        "<tuplet-actual><tuplet-number>5</tuplet-number></tuplet-actual>"
            + "<tuplet-normal><tuplet-number>4</tuplet-number></tuplet-normal>";
    PrintedPart part =
        part(
            START
                + quarter(
                    THREE_TWO
                        + notations(
                            "<tuplet number=\"1\" type=\"start\" show-number=\"both\"/>"
                                + "<tuplet number=\"2\" type=\"start\" placement=\"below\">"
                                + inner
                                + "</tuplet>"))
                + quarter(THREE_TWO + tuplet("number=\"2\" type=\"stop\"", ""))
                + quarter(THREE_TWO + tuplet("number=\"1\" type=\"stop\"", "")));
    assertThat(part.tuplets())
        .containsExactly(
            new Tuplet(at(0, 0), at(0, 2), 3, 2, Optional.empty(), Numbers.BOTH, Side.AUTO),
            new Tuplet(at(0, 0), at(0, 1), 5, 4, Optional.empty(), Numbers.ACTUAL, Side.BELOW));
  }

  @Test
  void aFileWithoutSignsOfTupletsGetsThem() {
    String third =
        "<note>"
            + pitched("A", 4)
            + "<duration>1</duration><type>eighth</type>"
            + THREE_TWO
            + "</note>";
    PrintedPart part = part("<attributes><divisions>3</divisions></attributes>" + third.repeat(6));
    assertThat(part.tuplets())
        .extracting(Tuplet::from, Tuplet::to, Tuplet::actual, Tuplet::normal)
        .containsExactly(tuple(at(0, 0), at(0, 2), 3, 2), tuple(at(0, 3), at(0, 5), 3, 2));
  }

  private static String slur(String attributes) {
    return notations("<slur " + attributes + "/>");
  }

  @Test
  void slursCurveToTheirSide() {
    assertThat(
            part(
                    START
                        + quarter(slur("type=\"start\" placement=\"above\""))
                        + quarter(
                            slur("type=\"stop\"") + slur("type=\"start\" orientation=\"under\"")),
                    quarter(slur("type=\"stop\"")))
                .slurs())
        .containsExactly(
            new Slur(at(0, 0), at(0, 1), Side.ABOVE), new Slur(at(0, 1), at(1, 0), Side.BELOW));
  }

  @Test
  void aSlurWithoutAnEndSpoilsNoLaterSlur() {
    assertThat(
            part(
                    START + quarter(slur("type=\"start\"")) + quarter(""),
                    quarter(slur("type=\"start\"")) + quarter(slur("type=\"stop\"")))
                .slurs())
        .containsExactly(new Slur(at(1, 0), at(1, 1), Side.AUTO));
  }

  // The second voice follows the first one in the file.
  @Test
  void aSlurMayGoFromTheSecondVoiceToTheFirst() {
    String first = "<voice>1</voice>";
    String second = "<voice>2</voice>";
    assertThat(
            part(START
                    + quarter(first)
                    + quarter(first + slur("type=\"stop\""))
                    + "<backup><duration>2</duration></backup>"
                    + quarter(second + slur("type=\"start\"")))
                .slurs())
        .containsExactly(new Slur(at(0, 2), at(0, 1), Side.AUTO));
  }

  @Test
  void aSlurToAHiddenRestEndsAtTheNoteBefore() {
    assertThat(
            part(START
                    + quarter(slur("type=\"start\""))
                    + quarter("")
                    + "<note print-object=\"no\"><rest/><duration>1</duration>"
                    + slur("type=\"stop\"")
                    + "</note>")
                .slurs())
        .containsExactly(new Slur(at(0, 0), at(0, 1), Side.AUTO));
  }

  // A slide is solid and a glissando wavy by default.
  @Test
  void linesGoFromNoteToNote() {
    assertThat(
            part(START
                    + quarter(
                        notations(
                            "<slide type=\"start\"/><ornaments><trill-mark/><wavy-line"
                                + " type=\"start\"/><wavy-line type=\"stop\"/></ornaments>"))
                    + quarter(notations("<slide type=\"stop\"/><glissando type=\"start\"/>"))
                    + quarter(notations("<glissando type=\"stop\"/>")))
                .noteLines())
        .containsExactlyInAnyOrder(
            new NoteLine(NoteLine.Kind.TRILL, at(0, 0), at(0, 0)),
            new NoteLine(NoteLine.Kind.SLIDE, at(0, 0), at(0, 1)),
            new NoteLine(NoteLine.Kind.GLISSANDO, at(0, 1), at(0, 2)));
  }

  @Test
  void tiesCurveToTheirSide() {
    PrintedNote tied = signed("<tied type=\"start\" orientation=\"over\"/>");
    assertThat(tied.tied()).isTrue();
    assertThat(tied.tieSide()).isEqualTo(Side.ABOVE);
  }
}
