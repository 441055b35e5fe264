package fingering.musicxml;

import static fingering.music.PlayingStyle.DETACHED;
import static fingering.music.PlayingStyle.PLAIN;
import static fingering.music.PlayingStyle.SINGING;
import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static fingering.musicxml.ScoreText.words;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.PlayingStyle;
import fingering.musicxml.ScoreText.N;
import fingering.musicxml.reading.PassageRequest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The playing style of moments, from words and articulation marks. */
class StyleReadingTest {

  private static List<PlayingStyle> styles(Passage passage) {
    return passage.moments().stream().map(Moment::style).toList();
  }

  /** Quarter notes and other elements in one measure. */
  private static List<PlayingStyle> styles(Object... content) {
    Object[] all = new Object[content.length + 1];
    all[0] = START;
    System.arraycopy(content, 0, all, 1, content.length);
    return styles(passage(violin(measure("1", all))));
  }

  private static N quarter() {
    return note("C5", 4);
  }

  private static N signed(String... signs) {
    StringBuilder xml = new StringBuilder();
    for (String sign : signs) {
      xml.append("<").append(sign).append("/>");
    }
    return quarter().notation("<articulations>" + xml + "</articulations>");
  }

  @Test
  void dolceHoldsUntilAnotherCharacter() {
    assertThat(
            styles(quarter(), words("dolce"), quarter(), quarter(), words("con fuoco"), quarter()))
        .containsExactly(PLAIN, SINGING, SINGING, PLAIN);
  }

  @Test
  void dolceHoldsThroughDynamicsAndRitardando() {
    assertThat(
            styles(words("dolce"), quarter(), words("cresc."), quarter(), words("rit."), quarter()))
        .containsExactly(SINGING, SINGING, SINGING);
  }

  @Test
  void aNewTempoEndsTheStyleEvenIfPrintedInAnotherPart() {
    Passage passage =
        read(score(
                part(
                    "Violin",
                    "",
                    measure("1", START, note("C5", 16)),
                    measure("2", words("Allegro"), note("C5", 16))),
                part(
                    "Viola",
                    "",
                    measure("1", START, words("dolce"), note("C4", 16)),
                    measure("2", note("D4", 16)))))
            .passage(PassageRequest.WHOLE.withPart("viola"));
    assertThat(styles(passage)).containsExactly(SINGING, PLAIN);
  }

  @Test
  void wordsOfAnotherPartAreNotForThisOne() {
    Passage passage =
        read(score(
                part("Violin", "", measure("1", START, words("dolce"), note("C5", 16))),
                part("Viola", "", measure("1", START, note("C4", 16)))))
            .passage(PassageRequest.WHOLE.withPart("viola"));
    assertThat(styles(passage)).containsExactly(PLAIN);
  }

  @Test
  void dolceBesideANewTempoBegins() {
    assertThat(styles(words("dolce"), words("Adagio"), quarter())).containsExactly(SINGING);
    assertThat(styles(words("Andante cantabile"), quarter())).containsExactly(SINGING);
  }

  @ParameterizedTest
  @CsvSource({
    "staccato, DETACHED",
    "staccatissimo, DETACHED",
    "spiccato, DETACHED",
    "strong-accent, DETACHED",
    "accent, PLAIN",
    "tenuto, PLAIN",
    "detached-legato, PLAIN"
  })
  void articulationMarksSayHowShortANoteIs(String sign, PlayingStyle style) {
    assertThat(styles(signed(sign), quarter())).containsExactly(style, PLAIN);
  }

  @Test
  void aDotWithADashIsPortato() {
    assertThat(styles(signed("staccato", "tenuto"))).containsExactly(PLAIN);
  }

  @Test
  void dotsUnderASlurArePortato() {
    assertThat(
            styles(
                signed("staccato").slur("start", 1),
                signed("staccato"),
                signed("staccato").slur("stop", 1),
                signed("staccato")))
        .containsExactly(PLAIN, PLAIN, PLAIN, DETACHED);
  }

  @Test
  void wordsForShortNotesHoldUntilOtherWordsButNotUnderSlurs() {
    assertThat(
            styles(
                words("sempre staccato"),
                quarter(),
                quarter().slur("start", 1),
                quarter().slur("stop", 1),
                quarter(),
                words("legato"),
                quarter()))
        .containsExactly(DETACHED, PLAIN, PLAIN, DETACHED, SINGING);
  }

  @Test
  void dotsInASingingLineAreShort() {
    assertThat(styles(words("dolce"), quarter(), signed("staccato"), quarter()))
        .containsExactly(SINGING, DETACHED, SINGING);
  }

  @Test
  void pluckedNotesHaveNoStyleAndArcoStartsAfresh() {
    assertThat(
            styles(
                words("dolce"),
                quarter(),
                words("pizz."),
                signed("staccato"),
                words("arco"),
                quarter()))
        .containsExactly(SINGING, PLAIN, PLAIN);
  }
}
