package fingering.abc;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.PlayingStyle;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tempo words, style words and dots of tunes. */
class WordsTest {
  private static List<PlayingStyle> styles(Passage passage) {
    return passage.moments().stream().map(Moment::style).toList();
  }

  @Test
  void aTempoMayBeAWordAlone() {
    Passage passage = Typed.passage("X:1\nL:1/4\nM:6/8\nQ:\"Adagio\"\nK:C\nC D E|");
    assertThat(passage.tempo()).hasToString("dotted-quarter=44");
  }

  @Test
  void aNumberBesideTheWordWins() {
    Passage passage = Typed.passage("X:1\nL:1/4\nM:4/4\nQ:\"Adagio\" 1/4=54\nK:C\nC D E F|");
    assertThat(passage.tempo()).hasToString("quarter=54");
  }

  @Test
  void annotationsAndDotsGiveTheStyle() {
    Passage passage =
        Typed.passage(
            "X:1\nL:1/4\nM:4/4\nK:C\nC \"^dolce\"D .E F|\"^con fuoco\"G !wedge!A (.B .c)|");
    assertThat(styles(passage))
        .containsExactly(
            PlayingStyle.PLAIN,
            PlayingStyle.SINGING,
            PlayingStyle.DETACHED,
            PlayingStyle.SINGING,
            PlayingStyle.PLAIN,
            PlayingStyle.DETACHED,
            PlayingStyle.PLAIN,
            PlayingStyle.PLAIN);
  }
}
