package fingering.abc;

import static fingering.abc.Typed.assertRepaired;
import static fingering.abc.Typed.eighths;
import static fingering.abc.Typed.numbers;
import static fingering.abc.Typed.passage;
import static fingering.abc.Typed.pitches;
import static fingering.abc.Typed.refusal;
import static fingering.abc.Typed.written;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tunes with signs that cannot be read. Rules: ABC standard 2.1, from memory. */
class RepairsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '@',
      value = {
        // Pitches
        "^/A; 1; quarter tones",
        "^3/2A; 1; quarter tones",
        "^^^A; 1; '^^^' is not an accidental; it was read as ^^",
        "^=A; 1; '^=' is not an accidental",
        "A ^ B; 3; no note follows the accidental",
        "A =|B; 3; no note follows the accidental",
        "F#; 2; a sharp is written before its note, as ^F for F sharp",
        "A#c; 2; a sharp is written before its note, as ^A for A sharp",
        "#F; 1; a sharp is written before its note, as ^F for F sharp",
        "B♭; 2; a flat is written before its note, as _B for B flat",
        "A h; 3; the sign 'h' is not used in ABC",
        "A ,; 3; ',' belongs immediately after a note",
        "C'''''''''; 1; this note is too high or too low",
        "C,,,,,,; 1; this note is too high or too low",
        // Lengths
        "A/3; 1; no note value has the length 1/24 of a whole note",
        "A0; 2; a note cannot have length 0",
        "A12345; 1; no note value has the length 9999/8 of a whole note",
        "A>|B; 2; no note of this measure follows the broken rhythm",
        "A>>>>B; 2; a broken rhythm has one to three signs",
        "A2>B; 3; a broken rhythm needs two notes of equal length",
        ">A; 1; '>' belongs between two notes",
        "(3AB|c; 1; the tuplet that begins here has only 2 of its 3 notes before the bar line",
        "(3AB(3cde; 1; the tuplet that begins here has only 2 of its 3 notes before the next",
        "(1A; 1; a tuplet of 1 needs the number of notes",
        "(3:0AAA; 1; the numbers of a tuplet are from 1 to 64",
        "Z2|A; 1; a rest of whole measures needs a meter",
        "A Z; 3; a rest of whole measures must be alone",
        "Z480000|A; 1; a rest has at most 999 measures",
        "2A; 1; a length belongs immediately after its note",
        "A/2/2; 4; a note has only one length",
        // Bar lines
        "A|:::|B; 2; '|:::|' is an unusual bar line",
        "A[|]:|B; 2; '[|]:|' is an unusual bar line",
        "a:B; 2; ':' is not a bar line",
        "A|0B; 3; endings are numbered from 1",
        "A|[1,B; 5; ',' belongs immediately after a note",
        "A&B; 2; '&' begins a second voice",
        "A]; 2; ']' has no counterpart here",
        "A*B; 2; the sign '*' is not used in ABC",
        "A\\B; 2; '\\' is allowed only at the end of a line",
        // Slurs, ties, decorations, chords
        "(cd; 1; the slur that begins here has no end",
        "cd); 3; the slur that ends here has no beginning",
        "(c)d; 3; a slur ends at the note where it begins",
        "((((((((cd; 7; more than 6 slurs are open here",
        "c-d; 2; a tie leads from C5 to D5",
        "c-z; 2; a tie leads from C5 to a rest",
        "c-|; 2; no note follows the tie that begins here",
        "-c; 1; no note comes before this tie",
        "[CE]-[DE]; 5; a tie leads from C4 to D4",
        "!fun!A; 1; !fun! is not a decoration of the ABC standard",
        "A !f A; 3; a single '!' is not a decoration",
        "A \"f A; 3; the words that begin here have no end",
        "+c+A; 1; the sign '+' is not used here",
        "uz A; 1; the decoration 'upbow' is before a rest",
        "A H|B; 3; the decoration 'fermata' has no note after it",
        "A T; 3; the decoration 'trill' has no note after it",
        "!1!!2!A; 4; the decoration '2' is a second finger for its note",
        "!1![CE]; 1; the decoration '1' could belong to any note of the chord",
        "[C2E]; 4; the notes of a chord have different lengths",
        "[\"C\"CE]; 2; words inside a chord were left out",
        "[CE A|B; 1; '[' has no counterpart here",
        "[CzE]; 3; 'z' cannot be inside a chord",
        "A[]; 2; this chord has no notes",
        "{}A; 1; there is no grace note between",
        "{cA; 1; '{' has no counterpart here",
        "{cz}A; 3; 'z' cannot be among grace notes",
        "{(3cde}A; 2; tuplets of grace notes are not supported",
        "[K:D A; 1; the field that begins here has no end",
      })
  void aWrongSignIsRepairedWithItsColumn(String notes, int column, String remark) {
    assertRepaired("K:C\n" + notes, "line 2, column %d: %s".formatted(column, remark));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "J:x; 1; the field J: is not used in ABC",
        "m:x=A; 1; macros (m:) are not supported",
        "s:x; 1; symbol lines (s:) are not supported",
        "+:x; 1; continued fields (+:) are not supported",
        "K:H; 3; ''",
        "K:Gfun; 3; ''",
        "K:d; 3; ''",
        "K:G fun; 5; ''",
        "K:C soprano; 5; ''",
        "K:C clef=perc; 5; ''",
        "K:C middle=d; 5; ''",
        "K:C octave=up; 5; ''",
        "K:C transpose=up; 5; ''",
        "M:3; 3; ''",
        "M:3/3; 3; ''",
        "M:0/4; 3; ''",
        "L:1/3; 3; ''",
        "L:2; 3; ''",
        "L:; 3; ''",
        "Q:fast; 3; ''",
        "Q:1/4=0; 3; ''",
        "Q:1/4=2000; 3; ''",
        "Q:1/0=60; 3; ''",
        "U:a=!trill!; 3; 'a=!trill!' does not assign a decoration",
        "U:W=!fun!; 3; !fun! is not a decoration",
        "%%propagate-accidentals far; 3; propagate-accidentals is followed by",
        "V:1 name=\"x; 5; the name that begins here has no end",
      })
  void aWrongFieldIsLeftOutInTheHeaderAndInTheBody(String field, int column, String remark) {

    assertRepaired("X:1\n" + field + "\nK:C\nA", "line 2, column %d: %s".formatted(column, remark));
    assertRepaired("K:C\nA\n" + field + "\nB", "line 3, column %d: %s".formatted(column, remark));
  }

  @Test
  void aFieldOfTheHeaderAmongTheNotesIsLeftOut() {
    assertRepaired("K:C\nc\nA:bc\nA", "line 3, column 1: the field A: belongs above the notes");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "A k H|B; A4 B4",
        "!Segno!A; A4",
        "A !f A; A4 F5 A4",
        "A \"f A; A4 A4",
        "A!B|C!D; A4 B4 C4 D4",
        "[CzE]A; C4 E4 A4",
        "[CE A|B; C4 E4 A4 B4",
        "{cA B|c; C5 A4 B4 C5",
        "(c)d; C5 D5",
        "c-d; C5 D5",
        "[K:D f|f; F#5 F#5",
        "^#F *A@, c#'; F#4 A3 C6",
        "^^^A ^=B ^/c; A##4 B4 C5",
        "A B & \"x|y\"c d & e|g (& a | b &) c; A4 B4 G5 A5 B5 C5",
      })
  void theNotesAroundAWrongSignAreRead(String notes, String pitches) {
    assertThat(pitches("K:C\n" + notes)).isEqualTo(pitches);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "A2>B; 2 1",
        "A/3; 3/8",
        "A0; 1",
        "(3AB|c; 2/3 2/3 1",
        "[C2E]; 2 2",
        "A/2/2 B; 1/2 1",
        "A@3 B3#/*2; 3 3/2"
      })
  void theLengthsAroundAWrongSignAreRead(String notes, String lengths) {
    assertThat(eighths("K:C\n" + notes)).isEqualTo(lengths);
  }

  @Test
  void aDecorationIsKnownInAnyCaseAndBetweenPlusSigns() {
    assertThat(written("K:C\n!Segno!A +Fermata+B").musicXml()).contains("<segno", "<fermata");
    assertThat(written("K:C\n!Segno!A +Fermata+B").remarks()).noneMatch(r -> r.startsWith("line"));
  }

  @Test
  void equalRepairsAreOneRemark() {
    assertRepaired(
        "K:C\nA k B k c\nk d",
        "line 2, column 3: the sign 'k' is not used in ABC; it was left out (and 2 more like it)");
  }

  @Test
  void onlyTwentyKindsOfRepairsAreListed() {
    StringBuilder body = new StringBuilder("K:C\nA");
    for (int i = 0; i < 50; i++) {
      body.append("!wrong").append(i).append("!A");
    }
    assertThat(written(body.toString()).remarks())
        .hasSize(22)
        .endsWith("30 more kinds of signs could not be read as typed");
  }

  @Test
  void aKeyMayHaveDoubleSharpsAndDoubleFlats() {
    assertThat(pitches("K:G#\nFGf")).isEqualTo("F##4 G#4 F##5");
    assertThat(pitches("K:Fb\nB")).isEqualTo("Bbb4");
  }

  // The standard's section 'K: - key': HP prints no signature, Hp two sharps.
  @Test
  void theKeysOfThePipesAreRead() {
    assertThat(pitches("K:HP\nfc")).isEqualTo("F5 C5");
    assertThat(pitches("K:Hp\nfc")).isEqualTo("F#5 C#5");
  }

  @Test
  void theOldFormOfATempoCountsUnitLengths() {
    assertThat(passage("L:1/8\nQ:C3=40\nK:C\nA").tempo()).hasToString("dotted-quarter=40");
  }

  @Test
  void anEndingMayDivideAMeasure() {
    String abc = "X:1\nM:3/4\nL:1/4\nK:C\n|:Bcd|e[1fg:|[2ga|]";
    assertThat(passage(abc).notes()).hasSize(8);
    assertThat(numbers(abc)).startsWith("1", "2", "2");
  }

  @Test
  void eachVoiceIsAPart() {
    String voices = "X:1\nV:1 name=Violin\nV:2 name=Cello clef=bass\nK:C\n";
    for (String body :
        new String[] {
          "V:1\nABc|\nV:2\nDEF|", "[V:2]D[V:1]AB\n[V:2]EF|\n[V:1]c|", "ABc\n[V:2]DEF"
        }) {
      assertThat(part(voices + body, "1")).as(body).isEqualTo("A4 B4 C5");
      assertThat(part(voices + body, "2")).as(body).isEqualTo("D4 E4 F4");
    }
    assertThat(part("K:C\nA|\n[V:x clef=alto]c|", "2")).isEqualTo("C5");
    assertThat(written("V:1\nV:2\nK:C\nA").musicXml()).doesNotContain("P2");
  }

  private static String part(String abc, String part) {
    TuneScore tune = written(abc);
    return String.join(
        " ",
        ScoreReader.read(ScoreFile.of(tune.musicXml(), tune.remarks()))
            .passage(PassageRequest.WHOLE.withPart(part))
            .notes()
            .stream()
            .map(note -> note.written().toString())
            .toList());
  }

  @Test
  void anEmptyLineInTheHeaderDoesNotEndTheTune() {
    assertThat(pitches("X:1\nT:x\n\nK:G\n\nf\n\nword")).isEqualTo("F#5");
  }

  @Test
  void aTitleAboveTheNumberIsRead() {
    assertThat(pitches("T:x\nK:G\nX:1\nf")).isEqualTo("F#5");
    assertThat(written("T:x\n\nX:1\nK:G\nf").remarks())
        .contains("the titles and keys above the first X: are left out");
  }

  @Test
  void textAfterTheTuneIsLeftOutWithARemark() {
    assertThat(written("K:C\nA\n\nB").remarks())
        .contains("the tune ends at an empty line; the text from line 4 on is left out");
  }

  @Test
  void aByteOrderMarkAndControlCharactersAreLeftOut() {
    assertThat(written("\uFEFFX:1\nK:C\nA")).isEqualTo(written("X:1\nK:C\nA"));
    assertRepaired("K:C\nA\u0007B", "line 2, column 2: the sign '\uFFFD' is not used in ABC");
  }

  @Test
  void aTuneWithoutNotesIsRefused() {
    assertThat(refusal("K:C")).startsWith(", line 1, column 4: the tune ends here without a note");
    assertThat(refusal("K:C\nz4|z4")).startsWith(", line 2, column 6: the tune ends here");
  }

  @Test
  void aTuneOfTooManyMeasuresIsRefused() {
    assertThat(refusal("M:4/4\nK:C\nA|" + "Z999|".repeat(600)))
        .startsWith(", line 3, column")
        .endsWith(
            "the tune has more than 500000 measures and is not read: check that it is a tune, split it if it is, or raise the limit 'measures'.");
  }
}
