package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.metronome;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static fingering.musicxml.ScoreText.words;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.musicxml.reading.PassageRequest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tempi from words, where no number is printed. */
class TempoWordReadingTest {

  private static final String SOUND = "<sound tempo=\"80\"/>";

  private static List<String> tempi(Passage passage) {
    return passage.tempi().stream().map(change -> change.tempo().toString()).toList();
  }

  /** Measures of one whole note, each after other elements. */
  private static String whole(String... before) {
    StringBuilder measures = new StringBuilder();
    for (int i = 0; i < before.length; i++) {
      measures.append(
          measure(Integer.toString(i + 1), i == 0 ? START : "", before[i], note("C5", 16)));
    }
    return violin(measures.toString());
  }

  @Test
  void aWordAtTheBeginningIsTheTempo() {
    Passage passage = passage(whole(words("Adagio")));
    assertThat(tempi(passage)).containsExactly("quarter=66");
    assertThat(passage.moments().get(0).soundMicros()).isEqualTo(Math.round(4 * 60e6 / 66));
    assertThat(passage.remarks())
        .containsExactly("tempo from words: 'Adagio' in m. 1 is quarter=66");
  }

  @ParameterizedTest
  @CsvSource({
    "4, 4, Allegro, quarter=132",
    "3, 4, Allegro, quarter=132",
    "2, 2, Allegro, half=88",
    "2, 2, Adagio, half=44",
    "3, 2, Andante, half=51",
    "6, 8, Allegro, dotted-quarter=88",
    "9, 8, Adagio, dotted-quarter=44",
    "12, 8, Andante, dotted-quarter=51",
    "6, 4, Allegro, dotted-half=88",
    "3, 8, Andante, eighth=76",
    "3, 8, Allegretto, eighth=168",
    "6, 16, Allegro, dotted-eighth=88"
  })
  void theMeterChoosesTheBeat(int beats, int beatType, String words, String tempo) {
    String start =
        START.replace(
            "<beats>4</beats><beat-type>4</beat-type>",
            "<beats>%d</beats><beat-type>%d</beat-type>".formatted(beats, beatType));
    Passage passage =
        passage(violin(measure("1", start, words(words), note("C5", 16 * beats / beatType))));
    assertThat(passage.tempo()).hasToString(tempo);
  }

  @Test
  void numbersWinOverWordsAtTheSamePlace() {
    assertThat(tempi(passage(whole(words("Adagio") + metronome("quarter", "50"), "", ""))))
        .containsExactly("quarter=50");
    assertThat(tempi(passage(whole(SOUND, words("Adagio") + "<sound tempo=\"50\"/>"))))
        .containsExactly("quarter=80", "quarter=50");
    assertThat(passage(whole(SOUND + words("Adagio"))).remarks()).isEmpty();
  }

  @Test
  void aNumberAfterThePickupIsForTheWordOverIt() {
    Passage passage =
        passage(
            violin(
                measure("0", START, words("Allegro"), note("C5", 4)),
                measure("1", "", note("D5", 12), note("C5", 4)),
                measure("2", metronome("quarter", "60"), note("C5", 16))));
    assertThat(passage.tempo()).hasToString("quarter=132");
    Passage numbered =
        passage(
            violin(
                measure("0", START, words("Allegro"), note("C5", 4), note("C5", 4)),
                measure("1", metronome("quarter", "60"), note("C5", 16))));
    assertThat(tempi(numbered)).containsExactly("quarter=60", "quarter=60");
  }

  @Test
  void laterWordsChangeTheTempoAtTheirPlace() {
    Passage passage =
        passage(
            whole(
                SOUND,
                words("Più mosso"),
                words("a tempo"),
                words("Meno mosso"),
                words("rit."),
                words("Presto"),
                words("Tempo I")));
    assertThat(tempi(passage))
        .containsExactly(
            "quarter=80", "quarter=92", "quarter=80", "quarter=70", "quarter=176", "quarter=80");
    assertThat(passage.remarks())
        .containsExactly(
            "tempi from words: 'Più mosso' in m. 2 is quarter=92, 'a tempo' in m. 3 is quarter=80,"
                + " 'Meno mosso' in m. 4 is quarter=70, 'Presto' in m. 6 is quarter=176"
                + " and 1 more place");
  }

  @Test
  void tempoPrimoIsThatOfItsMovement() {
    String xml =
        violin(
            measure("1", START, words("Adagio"), note("C5", 16)),
            measure("1", words("Allegro"), note("C5", 16)),
            measure("2", words("Presto"), note("C5", 16)),
            measure("3", words("Tempo primo"), note("C5", 16)));
    assertThat(tempi(passage(xml)))
        .containsExactly("quarter=66", "quarter=132", "quarter=176", "quarter=132");
  }

  @Test
  void aChangeOfNoTempoIsIgnored() {
    Passage passage = passage(whole(words("Più mosso")));
    assertThat(passage.tempo()).isEqualTo(Tempo.DEFAULT);
    assertThat(passage.remarks()).containsExactly("no tempo in the score; quarter=96 assumed");
  }

  @Test
  void theRequestedTempoReplacesTheOpeningWord() {
    Passage passage =
        read(whole(words("Adagio"), words("Allegro")))
            .passage(PassageRequest.WHOLE.withTempo(Tempo.parse("quarter=33")));
    assertThat(tempi(passage)).containsExactly("quarter=33", "quarter=66");
    assertThat(passage.remarks())
        .containsExactly("tempo from words: 'Allegro' in m. 2 is quarter=66");
  }

  @Test
  void wordsOverTheTopPartAreForAll() {
    Passage passage =
        read(score(
                part("Violin", "", measure("1", START, words("Largo"), note("C5", 16))),
                part("Viola", "", measure("1", START, note("C4", 16)))))
            .passage(PassageRequest.WHOLE.withPart("viola"));
    assertThat(passage.tempo()).hasToString("quarter=50");
  }

  @Test
  void aPassageNamesOnlyItsOwnWords() {
    Passage passage =
        read(whole(words("Adagio"), "", words("Allegro")))
            .passage(PassageRequest.WHOLE.withMeasures("2"));
    assertThat(passage.remarks())
        .containsExactly("tempo from words: 'Adagio' in m. 1 is quarter=66");
  }
}
