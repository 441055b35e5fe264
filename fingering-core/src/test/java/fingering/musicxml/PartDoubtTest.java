package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.score;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Passage;
import fingering.musicxml.reading.PassageRequest;
import fingering.tables.Instruments;
import org.junit.jupiter.api.Test;

/** Remarks on parts that name two instruments, or no bowed one: common practice. */
class PartDoubtTest {
  private static Passage passage(String name, String sound, PassageRequest request) {
    return read(score(part(name, sound, measure("1", START, note("D4", 16))))).passage(request);
  }

  private static Passage passage(String name) {
    return passage(name, "", PassageRequest.WHOLE);
  }

  @Test
  void aPartForCelloAndBassIsReadForTheCelloWithARemark() {
    Passage passage = passage("Violoncello e Contrabbasso");
    assertThat(passage.instrument().id()).isEqualTo("cello");
    assertThat(passage.remarks())
        .contains(
            "the part name 'Violoncello e Contrabbasso' also mentions the double bass; it is read for the cello; choose the other if that is wrong");
  }

  @Test
  void theSoundOverridesTheName() {
    Passage passage =
        passage("Violoncello e Contrabbasso", "strings.contrabass", PassageRequest.WHOLE);
    assertThat(passage.instrument().id()).isEqualTo("bass");
    assertThat(passage.remarks())
        .anyMatch(
            remark ->
                remark.endsWith(
                    "mentions the cello; it is read for the double bass; choose the other if that is wrong"));
  }

  @Test
  void aFlutePartIsReadWithARemark() {
    assertThat(passage("Flute").remarks())
        .contains(
            "'Flute' is not a part for a bowed string instrument; by its first clef it is read for the violin; choose another instrument if that is wrong");
    assertThat(passage("Stimme 1", "wind.flutes.flute", PassageRequest.WHOLE).remarks())
        .anyMatch(
            remark -> remark.startsWith("'Stimme 1' is not a part for a bowed string instrument"));
  }

  @Test
  void aNamedInstrumentGivesNoRemark() {
    PassageRequest violin =
        PassageRequest.WHOLE.withInstrument(Instruments.standard().named("violin"));
    assertThat(passage("Flute", "", violin).remarks())
        .noneMatch(remark -> remark.contains("Flute"));
    assertThat(passage("Violin").remarks()).noneMatch(remark -> remark.contains("instrument"));
    assertThat(passage("Melody").remarks())
        .contains(
            "the part does not name its instrument; by its first clef it is read for the violin");
  }
}
