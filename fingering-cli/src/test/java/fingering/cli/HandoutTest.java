package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One side of paper for a student. */
class HandoutTest {
  @TempDir Path folder;

  private static long count(String text, String part) {
    return Pattern.compile(part).matcher(text).results().count();
  }

  private static String html(Handouts handout) {
    return handout.on("a4").succeeded().out();
  }

  @Test
  void holdsMusicLadderSpotsAndTheCautionOnce() {
    String html = html(Handouts.DEMO);
    assertThat(html)
        .contains("<h1>Lanterns on the Millrace</h1>", "Hearing: Saturday 12 December 2026")
        .contains("quarter = 96", "fingers: partly 3rd", "Tempo ladder", "m.\u00a015–17:");
    assertThat(count(html, "class=\"sheet\"")).isEqualTo(1);
    assertThat(count(html, "class=\"box\"")).as("one for each day").isEqualTo(13);
    assertThat(count(html, "class=\"spot\"")).isEqualTo(3);
    assertThat(count(html, "Your teacher has the last word")).isEqualTo(1);
    assertThat(count(html, "class=\"ring\"")).as("a path a line").isGreaterThan(3);
  }

  @Test
  void otherPlanIsShownOnlyIfItIsKeptOpen() {
    assertThat(html(Handouts.DEMO)).doesNotContain("Below it", "1st position)");
    assertThat(html(Handouts.SHORT))
        .contains("Above the staff: 3rd position; Below it, where it differs: 1st position.");
  }

  @Test
  void spaceLeftHasLinesToWriteOnAndAnEmptyLadder() {
    String html = html(Handouts.SHORT);
    assertThat(count(html, "class=\"writing\"")).isGreaterThan(3);
    assertThat(html).contains("Write down the day", "Student: ____", "Hearing: ____");
    assertThat(count(html, "class=\"box\"")).isGreaterThan(5);
  }

  @Test
  void longLadderShowsTheNextDaysAndSomeOfTheOthers() {
    String html = html(Handouts.DENSE);
    assertThat(count(html, "<tr>") - 1).isBetween(6L, 14L);
    assertThat(html).contains("Wed 25 Nov", "Thu 26 Nov", "Tue 29 Dec", "Wed 30 Dec");
    assertThat(count(html, "class=\"sheet\"")).isEqualTo(1);
  }

  @Test
  void studentAndHearingComeFromTheLesson() {
    Path lesson = Session.DEMO.resolveSibling("../examples/imke-mill.yaml");
    Session session =
        Session.of("handout", "--lesson", lesson, "--from", "60", "--today", "2026-11-30");
    assertThat(session.succeeded().out()).contains("Student: Imke", "Rain on the Mill");
  }

  @Test
  void moreThanFortyMeasuresGoOnOnFurtherSides() {
    Session session =
        Session.of("handout", "--abc", Handouts.sixteenths(60), "--instrument", "viola");
    assertThat(session.code()).isZero();
    assertThat(session.err())
        .isEqualTo(
            "Note: one side holds up to 40 measures, and there are 60, so the handout has 2 sides;"
                + " choose fewer with --measures.\n");
    assertThat(session.out()).contains("Rain – ____", "side 2 of 2");
    assertThat(Handouts.DEMO.on("letter").succeeded().err()).isEmpty();
  }

  @Test
  void onManySidesTheMusicIsAsSmallAsIsComfortable() {
    Session session =
        Session.of("handout", "--abc", Handouts.sixteenths(250), "--instrument", "viola");
    assertThat(session.code()).isZero();
    assertThat(session.err()).contains("there are 250, so the handout has");
    // 190 mm are 135.71 staff spaces of 1.4 mm.
    assertThat(session.out()).contains("side 5 of ", "viewBox=\"0 ").contains(" 1357.1 ");
  }

  @Test
  void whatALadderStillNeedsIsSaid() {
    Session session = Session.of("handout", Session.DEMO, "--to", "quarter=96");
    assertThat(session.code()).isZero();
    assertThat(session.out()).contains("Write down the day");
    assertThat(session.err())
        .isEqualTo(
            "Note: the ladder is left to fill in by hand; to plan it, give --by DATE and --from"
                + " MARK too.\n");
  }

  @Test
  void onlyPagesAreMade() {
    for (String name : new String[] {"a.pdf", "a.txt", "a.json"}) {
      Session refused =
          Session.of("handout", Session.DEMO, "--output", folder.resolve(name)).refused(2);
      assertThat(refused.err()).contains("'handout' makes html, not", "end the name in .html");
      assertThat(refused.err().lines()).hasSize(1);
    }
    assertThat(Session.of("handout", Session.DEMO, "--paper", "a5").refused(2).err())
        .contains("a4", "letter");
  }
}
