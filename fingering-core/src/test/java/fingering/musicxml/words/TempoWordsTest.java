package fingering.musicxml.words;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.musicxml.words.TempoWords.Instruction;
import fingering.musicxml.words.TempoWords.Kind;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words for a tempo as printed in parts: common practice, no source. */
class TempoWordsTest {

  private static int beats(String words) {
    Optional<Instruction> read = TempoWords.read(words);
    assertThat(read).as(words).map(Instruction::kind).contains(Kind.BEATS);
    return read.orElseThrow().number();
  }

  @ParameterizedTest
  @CsvSource({
    "Adagio, 66",
    "ALLEGRO, 132",
    "(Andante), 76",
    "Mäßig, 96",
    "Massig, 96",
    "Maessig, 96",
    "Modéré, 96",
    "modere, 96",
    "III. Menuetto, 120",
    "Tempo di Menuetto, 120",
    "Menuetto. Allegretto, 112",
    "Menuetto Allegretto, 112",
    "Scherzo: Presto, 176",
    "Adagio – Allegro, 66",
    "Adagio molto espressivo, 66",
    "Nicht zu schnell, 112",
    "Pas trop vite, 112",
    "Slowly, 56"
  })
  void wordsNameATempo(String words, int beats) {
    assertThat(beats(words)).isEqualTo(beats);
  }

  @ParameterizedTest
  @CsvSource({
    "Molto adagio, Adagio",
    "Adagio molto, Adagio",
    "Adagio, Poco adagio",
    "Adagio, Adagio ma non troppo e molto cantabile",
    "Andante sostenuto, Andante",
    "Andante, Andante con moto",
    "Andante, Andante quasi allegretto",
    "Andante quasi allegretto, Allegretto",
    "Allegro ma non troppo, Allegro",
    "'Allegro, ma non tanto', Allegro",
    "Allegro moderato, Allegro",
    "Moderato, Allegro moderato",
    "Allegro, Allegro con brio",
    "Allegro, Molto allegro",
    "Allegro, Allegro assai",
    "Allegro, Allegro vivace",
    "Allegro vivace, Vivace",
    "Allegro ma non presto, Allegro",
    "Sehr langsam, Langsam",
    "Ziemlich langsam, Mäßig",
    "Lebhaft, Sehr lebhaft",
    "Très lent, Lent"
  })
  void theFirstIsSlowerThanTheSecond(String slower, String faster) {
    assertThat(beats(slower)).isLessThan(beats(faster));
  }

  @ParameterizedTest
  @CsvSource({
    "più mosso, PERCENT, 115",
    "Poco piu mosso, PERCENT, 108",
    "Meno mosso, PERCENT, 87",
    "Più lento, PERCENT, 85",
    "Plus lent, PERCENT, 85",
    "Tempo I, FIRST, 0",
    "Tempo Iº, FIRST, 0",
    "Tempo primo, FIRST, 0",
    "a tempo, AGAIN, 0",
    "au mouvement, AGAIN, 0"
  })
  void wordsChangeATempo(String words, Kind kind, int number) {
    assertThat(TempoWords.read(words)).contains(new Instruction(kind, number));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "dolce",
        "rit.",
        "poco rall.",
        "poco a poco più mosso",
        "sempre più allegro",
        "accel. al Presto",
        "immer schneller werden",
        "en animant",
        "L'istesso tempo",
        "Menuetto D.C.",
        "Allegretto D. C. al Fine",
        "slow bow",
        "non presto",
        "molto",
        "con moto",
        "tranquillo",
        "breit",
        "Trio",
        "This long text is no heading, although it names an Allegro: it explains, in one sentence after"
            + " another, how the composer heard the piece, who played it first, and why nobody has"
            + " ever agreed on the tempo of its last movement."
      })
  void otherWordsLeaveTheTempo(String words) {
    assertThat(TempoWords.read(words)).isEmpty();
  }
}
