package fingering.musicxml.words;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.PlayingStyle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words for the playing style as printed in parts: common practice, no source. */
class StyleWordsTest {

  @ParameterizedTest
  @CsvSource({
    "dolce, SINGING",
    "p dolce, SINGING",
    "molto espr., SINGING",
    "con molta espressione, SINGING",
    "Andante cantabile, SINGING",
    "sul tasto, SINGING",
    "m.v., SINGING",
    "sehr ausdrucksvoll, SINGING",
    "doux et expressif, SINGING",
    "legato, SINGING",
    "non legato, DETACHED",
    "sempre stacc., DETACHED",
    "stacc:, DETACHED",
    "marcato ma dolce, DETACHED",
    "leggiero, DETACHED",
    "martele, DETACHED",
    "sautillé, DETACHED",
    "con fuoco, PLAIN",
    "Allegro con brio, PLAIN",
    "senza espressione, PLAIN",
    "pizz., PLAIN"
  })
  void wordsAskForAStyle(String words, PlayingStyle style) {
    assertThat(StyleWords.read(words)).contains(style);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "cresc.", "rit.", "arco", "sul G", "ten.", "con sord."})
  void otherWordsLeaveTheStyle(String words) {
    assertThat(StyleWords.read(words)).isEmpty();
  }
}
