package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.score;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.playability.CheckLevel;
import fingering.playability.ScoreCheck;
import fingering.playability.check.Checker;
import org.junit.jupiter.api.Test;

/** A part that cannot be read does not affect the others. */
class UnreadPartsTest {
  private static final String GOOD = measure("1", START, note("D5", 16));

  /** More notes at once than any music has. */
  private static final String BAD =
      measure("1", START, note("D5", 12) + note("E5", 12).chord().toString().repeat(1_001));

  private static Score violinAnd(String other, String music) {
    return read(score(part("Violin", "strings.violin", GOOD), part(other, "", music)));
  }

  @Test
  void theOtherPartsAreReadWithARemark() {
    Score score = violinAnd("Trumpet", BAD);

    assertThat(score.passage(PassageRequest.WHOLE.withPart("Violin")).notes()).hasSize(1);
    assertThat(score.passage(PassageRequest.WHOLE.withPart("Violin")).remarks())
        .anySatisfy(
            remark ->
                assertThat(remark)
                    .startsWith(
                        "part 2 is left out. More than 1000 notes sound together in Trumpet, measure 1"));
  }

  @Test
  void anUnreadableNoteOfAnotherPartIsNotMentioned() {
    String broken = note("D5", 12).toString().replace("<step>D</step>", "");
    Score score = violinAnd("Trumpet", measure("1", START, broken, note("E5", 4)));

    assertThat(score.passage(PassageRequest.WHOLE.withPart("Violin")).remarks())
        .noneMatch(remark -> remark.contains("readable"));
    assertThat(score.passage(PassageRequest.WHOLE.withPart("Trumpet")).remarks())
        .anyMatch(remark -> remark.contains("no readable pitch"));
  }

  @Test
  void anUnreadablePartIsRefusedIfRequested() {
    Score score = violinAnd("Trumpet", BAD);

    assertThat(Refusal.of(() -> score.passage(PassageRequest.WHOLE.withPart("Trumpet"))))
        .startsWith("More than 1000 notes sound together in Trumpet, measure 1");
  }

  @Test
  void aScoreWithOnlyUnreadablePartsIsRefused() {
    assertThat(
            Refusal.of(
                () ->
                    read(
                        score(
                            part("Violin", "strings.violin", BAD),
                            part("Viola", "strings.viola", BAD)))))
        .startsWith("More than 1000 notes sound together in Violin, measure 1");
  }

  @Test
  void aCheckRefusesAnUnreadableStringPart() {
    Checker checker = Checker.of(CheckLevel.preset("intermediate"));
    ScoreCheck check = checker.check(violinAnd("Trumpet", BAD));

    assertThat(check.parts()).hasSize(1);
    assertThat(check.remarks()).anyMatch(remark -> remark.startsWith("part 2 is left out."));
    assertThat(Refusal.of(() -> checker.check(violinAnd("Viola", BAD))))
        .startsWith("More than 1000 notes sound together in Viola, measure 1");
  }
}
