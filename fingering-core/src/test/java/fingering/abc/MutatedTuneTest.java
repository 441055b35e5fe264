package fingering.abc;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.abc.syntax.AbcException;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A tune with wrong characters. */
class MutatedTuneTest {
  private static final String HEADER =
      "X:1\nT:The Mill\nM:4/4\nL:1/8\nU:W=!trill!\nK:D clef=treble\n";
  private static final String NOTES =
      """
      !1!D>E (3FGA "^pizz."d2 {ef}g2|[DA]2 ^c_B =c2- c2|
      |:uA vB .c d (e|f g) a b:|1 z2 A,,2 B'2 x2|2 TG3 WA3||
      A/2B/2 c//d3/2 (5:4:5ABcde +f+y f2|Z2|"Am"a4 b2 |]
      """;
  private static final List<String> READ = read(HEADER + NOTES);

  /** The notes with their times. */
  private static List<String> read(String abc) {
    TuneScore tune = Typed.written(abc);
    return ScoreReader.read(ScoreFile.of(tune.musicXml(), tune.remarks()))
        .passage(PassageRequest.WHOLE.withPart("1"))
        .notes()
        .stream()
        .map(note -> "%s %s %s".formatted(note.written(), note.start(), note.length()))
        .toList();
  }

  // The standard reserves all of these but k (ABC 2.1, section 'Reserved characters', from memory).
  @Property(tries = 200)
  void aSignThatAbcDoesNotUseChangesNoNote(
      @ForAll @IntRange(max = 5) int kind, @ForAll @IntRange(max = 160) int place) {
    char sign = "k#;*@?".charAt(kind);
    int at = Math.min(place, NOTES.length());
    assertThat(read(HEADER + NOTES.substring(0, at) + sign + NOTES.substring(at))).isEqualTo(READ);
  }

  @Property(tries = 300)
  void aTuneWithOneWrongCharacterIsRead(
      @ForAll @IntRange(min = ' ', max = '~') int sign,
      @ForAll boolean insert,
      @ForAll @IntRange(max = 230) int place) {
    StringBuilder abc = new StringBuilder(HEADER + NOTES);
    int at = Math.min(place, abc.length() - 1);
    if (insert) {
      abc.insert(at, (char) sign);
    } else {
      abc.deleteCharAt(at);
    }
    try {
      assertThat(Typed.written(abc.toString()).musicXml()).contains("<pitch>");
    } catch (AbcException e) {
      assertThat(e).as(abc.toString()).hasMessageMatching("study, line \\d+, column \\d+: .*\\S");
    }
  }

  @Property(tries = 1000)
  void aTuneWithManyWrongCharactersIsReadOrRefusedInOneSentence(
      @ForAll @IntRange(min = 2, max = 12) int mutations, @ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder abc = new StringBuilder(HEADER + NOTES);
    for (int i = 0; i < mutations; i++) {
      int at = random.nextInt(abc.length());
      int to = Math.min(abc.length(), at + random.nextInt(9));
      switch (random.nextInt(3)) {
        case 0 -> abc.delete(at, to);
        case 1 -> abc.insert(random.nextInt(abc.length()), abc.substring(at, to));
        default -> abc.insert(at, (char) (' ' + random.nextInt(95)));
      }
    }
    try {
      assertThat(Typed.written(abc.toString()).musicXml()).contains("<note>");
    } catch (AbcException e) {
      assertThat(e)
          .as(abc.toString())
          .hasMessageMatching("study(, line \\d+)?(, column \\d+)?: .*\\S");
    }
  }
}
