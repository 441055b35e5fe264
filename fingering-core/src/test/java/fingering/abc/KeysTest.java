package fingering.abc;

import static fingering.abc.Typed.on;
import static fingering.abc.Typed.passage;
import static fingering.abc.Typed.pitches;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Field K. The table of keys and modes: ABC standard 2.1, section 'K: - key', from memory. */
class KeysTest {
  /**
   * The order in which signatures take sharps, and, backwards, flats (common practice, no source).
   */
  private static final String SHARPS = "FCGDAEB";

  /** The pitches of C D E F G A B, from middle C up, under a key signature. */
  private static String scale(int fifths) {
    StringBuilder scale = new StringBuilder();
    for (char letter : "CDEFGAB".toCharArray()) {
      int turn = SHARPS.indexOf(letter);
      String sign = turn < fifths ? "#" : 6 - turn < -fifths ? "b" : "";
      scale.append(scale.isEmpty() ? "" : " ").append(letter).append(sign).append(4);
    }
    return scale.toString();
  }

  @ParameterizedTest
  @CsvSource({
    "7, C# A#m G#Mix D#Dor E#Phr F#Lyd B#Loc",
    "6, F# D#m C#Mix G#Dor A#Phr BLyd E#Loc",
    "5, B G#m F#Mix C#Dor D#Phr ELyd A#Loc",
    "4, E C#m BMix F#Dor G#Phr ALyd D#Loc",
    "3, A F#m EMix BDor C#Phr DLyd G#Loc",
    "2, D Bm AMix EDor F#Phr GLyd C#Loc",
    "1, G Em DMix ADor BPhr CLyd F#Loc",
    "0, C Am GMix DDor EPhr FLyd BLoc",
    "-1, F Dm CMix GDor APhr BbLyd ELoc",
    "-2, Bb Gm FMix CDor DPhr EbLyd ALoc",
    "-3, Eb Cm BbMix FDor GPhr AbLyd DLoc",
    "-4, Ab Fm EbMix BbDor CPhr DbLyd GLoc",
    "-5, Db Bbm AbMix EbDor FPhr GbLyd CLoc",
    "-6, Gb Ebm DbMix AbDor BbPhr CbLyd FLoc",
    "-7, Cb Abm GbMix DbDor EbPhr FbLyd BbLoc"
  })
  void aKeyHasTheAccidentalsOfTheStandardsTable(int fifths, String keys) {
    List<String> all = Splitter.on(' ').splitToList(keys);
    assertThat(all).hasSize(7);
    for (String key : all) {
      String abc = "K:" + key + "\nCDEFGAB|";
      assertThat(pitches(abc)).as(key).isEqualTo(scale(fifths));
      assertThat(passage(abc).measures().get(0).fifths()).as(key).isEqualTo(fifths);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A minor",
        "Am",
        "A min",
        "AMIN",
        "Aaeolian",
        "A Aeo",
        "C",
        "Cmaj",
        "C major",
        "C Ion",
        "none",
        ""
      })
  void aModeIsReadByItsFirstThreeLettersInAnyCase(String key) {
    assertThat(pitches("K:" + key + "\nCDEFGAB|")).isEqualTo(scale(0));
  }

  @Test
  void aKeySignatureMayHaveAdditionalAccidentals() {
    // The standard's examples: D Phrygian with an F sharp, and the same written out.
    String klezmer = "C4 D4 Eb4 F#4 G4 A4 Bb4";
    assertThat(pitches("K:D Phr ^f\nCDEFGAB|")).isEqualTo(klezmer);
    assertThat(pitches("K:D exp _b _e ^f\nCDEFGAB|")).isEqualTo(klezmer);
    assertThat(pitches("K:D =c\nCDEFGAB|")).isEqualTo(scale(1));
    assertThat(passage("K:D =c\nC").measures().get(0).fifths()).isEqualTo(1);
  }

  @Test
  void aTrillFollowsAnUnusualKeySignature() {
    assertThat(passage("K:D Phr ^f\nTE|TD|Ta|").notes())
        .extracting(note -> note.marks().trill().orElseThrow().toString())
        .containsExactly("F#4", "Eb4", "Bb5");
  }

  @Test
  void aKeyMayChangeOnASeparateLineAndWithinALine() {
    assertThat(pitches("K:D\nFc|\nK:F\nFB|[K:Eb]EA|]")).isEqualTo("F#4 C#5 F4 Bb4 Eb4 Ab4");
  }

  @ParameterizedTest
  @CsvSource({
    "treble, violin",
    "clef=treble, violin",
    "G clef=alto, viola",
    "Gm alto, viola",
    "D clef=bass, cello",
    "bass, cello",
    "C bass-8, bass",
  })
  void theClefShowsTheInstrumentAsInAScore(String key, String instrument) {
    assertThat(passage("K:" + key + "\n A|").instrument().id()).isEqualTo(instrument);
  }

  @Test
  void theNameOfTheVoiceOverridesTheClef() {
    assertThat(passage("V:1 clef=treble name=\"Viola solo\"\nK:C\nc|").instrument().id())
        .isEqualTo("viola");
  }

  @Test
  void anEightAtTheClefAndAnOctaveShiftTheNotes() {
    assertThat(passage("K:C treble+8\nC|", on("violin")).notes().get(0).written())
        .hasToString("C5");
    assertThat(pitches("K:C bass-8\nC,|")).isEqualTo("C2");
    assertThat(pitches("K:C bass octave=-1\nC|")).isEqualTo("C3");
    assertThat(passage("K:C treble transpose=-2\nD|").notes().get(0).sounding()).hasToString("C4");
  }
}
