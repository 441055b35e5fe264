package fingering.abc;

import static fingering.abc.Typed.on;
import static fingering.abc.Typed.passage;
import static fingering.abc.Typed.pitches;
import static fingering.abc.Typed.written;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Harmonic;
import fingering.music.Marks;
import fingering.music.Moment;
import fingering.music.Note;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Slurs, chords, grace notes and decorations. Rules and names: ABC standard 2.1, from memory. */
class SignsAndLinesTest {

  /** A minus for each moment that a slur joins to the previous one, a dot for the others. */
  private static String slurs(String notes) {
    StringBuilder joined = new StringBuilder();
    for (Moment moment : passage("K:C\n" + notes).moments()) {
      joined.append(moment.slurred() ? '-' : '.');
    }
    return joined.toString();
  }

  private static Marks marks(String note) {
    List<Note> notes = passage("K:C\n" + note).notes();
    assertThat(notes).hasSize(1);
    return notes.get(0).marks();
  }

  // The last is the standard's: the bracket after e ends the slur from c.
  @ParameterizedTest
  @CsvSource({
    "(cd)ef, .-..",
    "c(def)|g, ..--.",
    "(c(de)f) g, .---.",
    "((cd)e) f, .--.",
    ".(cd) e, .-.",
    "(c|d)|(e z f), .-.-",
    "(3(cde) f, .--.",
    "((3cde) f, .--.",
    "(c d (e) f g a), .-----",
    "({g}c d) e, .--.",
  })
  void aSlurExtendsFromNoteToNote(String notes, String joined) {
    assertThat(slurs(notes)).isEqualTo(joined);
  }

  @Test
  void oneNoteMayEndASlurAndBeginAnother() {
    assertThat(written("K:C\n(c d (e) f g a)").musicXml())
        .containsSubsequence(
            "number=\"1\"",
            "type=\"stop\" number=\"1\"",
            "type=\"start\" number=\"2\"",
            "type=\"stop\" number=\"2\"");
  }

  @Test
  void theNotesOfAChordBeginTogether() {
    assertThat(passage("K:C\n[D2A2] [dBD]4|").moments())
        .extracting(moment -> moment.starting().size())
        .containsExactly(2, 3);
  }

  @Test
  void aTieInsideAChordAppliesToItsNoteOnly() {
    assertThat(passage("K:C\n[D-A]2[DB]2|[DA]2-[DA]2").notes())
        .extracting(note -> note.written() + " " + note.length())
        .containsExactlyInAnyOrder("D4 2", "A4 1", "B4 1", "D4 2", "A4 2");
  }

  @Test
  void graceNotesTakeNoTime() {
    assertThat(passage("K:C\n{g}A {/g}A {gef}A {[Bd]}A {a>b}A {c2}A T^c2{Bc}|d").moments())
        .extracting(Moment::grace)
        .containsExactly(
            true, false, true, false, true, true, true, false, true, false, true, true, false, true,
            false, false, true, true, false);
    assertThat(written("K:C\n{/g}A{g}A").musicXml())
        .containsOnlyOnce("<grace slash=\"yes\"/>")
        .containsOnlyOnce("<grace/>");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "1", "2", "3", "4"})
  void aFingerIsPrinted(String finger) {
    assertThat(marks("!" + finger + "!A").finger()).contains(finger);
  }

  @Test
  void fingersAreWrittenInsideAChord() {
    assertThat(passage("K:C\n[!1!D!3!A]").notes())
        .extracting(note -> note.marks().finger().orElseThrow())
        .containsExactly("1", "3");
  }

  @Test
  void theFifthFingerIsLeftOutWithARemark() {
    assertThat(marks("!5!A").finger()).isEmpty();
    assertThat(written("K:C\n!5!A").remarks()).contains("left out: the decoration !5!");
  }

  @Test
  void theThumbAndTheLeftHandPizzicatoArePrinted() {
    assertThat(marks("!thumb!a").finger()).contains("T");
    assertThat(marks("!plus!A").leftPlucked()).isTrue();
    assertThat(marks("!+!A").leftPlucked()).isTrue();
  }

  // The standard: a small circle, for an open string or a harmonic. Which pitches can be which:
  // S. Adler, The Study of Orchestration, from memory.
  @ParameterizedTest
  @CsvSource({
    "violin, D, open", "violin, d, harmonic", "violin, e, open", "violin, e', harmonic",
    "viola, 'C,', open", "viola, C, harmonic", "viola, A, open", "cello, 'D,', open",
    "cello, 'A,', open", "cello, D, harmonic", "cello, A, harmonic",
  })
  void aCircleMeansAnOpenStringOrAHarmonicByItsPitch(String instrument, String note, String what) {
    Marks marks = passage("K:C\n!open!" + note, on(instrument)).notes().get(0).marks();
    if (what.equals("open")) {
      assertThat(marks.finger()).contains("0");
      assertThat(marks.harmonic()).isEmpty();
    } else {
      assertThat(marks.finger()).isEmpty();
      assertThat(marks.harmonic()).contains(Harmonic.NATURAL);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "!trill!, B4",
    "T, B4",
    "!trill(!, B4",
    "!uppermordent!, B4",
    "!pralltriller!, B4",
    "P, B4",
    "!turn!, B4",
    "!turnx!, B4",
    "!invertedturn!, B4",
  })
  void ornamentsHaveAnUpperNote(String sign, String upper) {
    assertThat(marks(sign + "A").trill().orElseThrow()).hasToString(upper);
  }

  @ParameterizedTest
  @ValueSource(strings = {"!mordent!", "!lowermordent!", "M", "~", "!roll!"})
  void otherOrnamentsHaveNone(String sign) {
    assertThat(marks(sign + "A").trill()).isEmpty();
  }

  @Test
  void anAccidentalOfTheMeasureCountsForATrill() {
    assertThat(passage("K:C\n^c TB|TB|^C2 TB|").notes())
        .extracting(note -> note.marks().trill().map(Object::toString).orElse("-"))
        .containsExactly("-", "C#5", "C5", "-", "C#5");
    assertThat(passage("%%propagate-accidentals not\nK:C\n^c TB").notes().get(1).marks().trill())
        .hasValueSatisfying(upper -> assertThat(upper).hasToString("C5"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"L", "!>!", "!accent!", "!emphasis!"})
  void anAccentIsAnAccent(String sign) {
    assertThat(marks(sign + "A").accent()).isTrue();
  }

  // Common practice, no source: pizzicato lasts until arco.
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"^pizz.\"A B|\"^arco\"c",
        "\"pizz.\"A B|\"arco\"c",
        "\"_pizz.\"A B|\"@2,-3 arco\"c"
      })
  void pizzicatoHoldsUntilArco(String notes) {
    assertThat(passage("K:C\n" + notes).moments())
        .extracting(Moment::pizzicato)
        .containsExactly(true, true, false);
  }

  @ParameterizedTest
  @CsvSource({
    "u, up-bow",
    "v, down-bow",
    "!upbow!, up-bow",
    "!downbow!, down-bow",
    "., staccato",
    "!wedge!, staccatissimo",
    "!tenuto!, tenuto",
    "H, fermata",
    "!invertedfermata!, fermata",
    "!breath!, breath-mark",
    "!snap!, snap-pizzicato",
    "!arpeggio!, arpeggiate",
    "!mf!, mf",
    "!ffff!, ffff",
    "!sfz!, sfz",
    "!crescendo(!, wedge",
    "!>)!, wedge",
    "S, segno",
    "O, coda",
    "!D.C.!, words",
    "!fine!, words",
    "!slide!, scoop",
  })
  void aDecorationOfTheStandardIsInTheScore(String sign, String element) {
    assertThat(written("K:C\n" + sign + "A").musicXml()).containsPattern("<" + element + "[ />]");
  }

  @Test
  void aLetterMayStandForAnotherDecoration() {
    assertThat(passage("U:W=!trill!\nU:T=!nil!\nK:C\nWATA").notes())
        .extracting(note -> note.marks().trill().isPresent())
        .containsExactly(true, false);
  }

  @Test
  void chordSymbolsAndLyricsAreLeftOutWithARemark() {
    assertThat(written("K:C\n\"Am\"A \"F#m7/C\"B\nw: la la\n").remarks())
        .contains("left out: chord symbols; lyrics");
    assertThat(written("K:C\n\"Am\"A").musicXml()).doesNotContain("Am");
    assertThat(written("K:C\n\"Cantabile\"A").musicXml()).contains("<words>Cantabile</words>");
  }

  @Test
  void blanksSeparateBeams() {
    String score = written("K:C\nABc2 AB cd|A`B c/d/|{de}f A y B").musicXml();
    assertThat(score.split(">begin<", -1)).hasSize(1 + 3 + 1 + 2 + 2);
    assertThat(pitches("K:C\nA`B y A y2 B$|\\\nc")).isEqualTo("A4 B4 A4 B4 C5");
  }
}
