package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan of a lesson is changed on the page: notes, demands, undo, and what is saved. */
class OpenLessonTest extends OpenedDemo {
  @Test
  void demandsOnOtherMeasuresAreLeftOutUntilUndo() throws Exception {
    post("choice", "measures", "17-32");
    post("demand", "key", "avoid", "value", "fourth-finger", "from", "18", "to", "18");
    post("fix", "moment", "0", "way", other(0));
    assertThat(saved()).contains("fix: 17.1=", "avoid: fourth-finger@18");

    HttpResponse<String> fewer = post("choice", "measures", "18-24");
    assertThat(fewer.statusCode()).isEqualTo(Reply.DONE);
    assertThat(fewer.body()).contains("Demands that no longer fit are left out now.");
    assertThat(saved()).contains("avoid: fourth-finger@18").doesNotContain("fix");
    assertThat(post("choice", "measures", "18-25").body()).doesNotContain("no longer fit");

    post("undo");
    post("undo");
    assertThat(saved()).contains("fix: 17.1=", "measures: 17-32");
  }

  @Test
  void fingersOfOneInstrumentAreLeftOutForAnother() throws Exception {
    post("fix", "moment", "12", "way", other(12));
    post("demand", "key", "avoid", "value", "fourth-finger", "from", "5", "to", "5");
    String cello = post("choice", "part", "1", "instrument", "cello").body();

    assertThat(cello).contains("Cello, measures 0–32", "Demands that no longer fit are left out");
    assertThat(saved())
        .contains("instrument: cello", "avoid: fourth-finger@5")
        .doesNotContain("fix");
  }

  @Test
  void waysOfANoteAreListedWithThatOfThePlanAndTheirPrices() throws Exception {
    String note = visitor.get(address + "/note?moment=12").body();

    assertThat(note).contains("Measure 4, beat 3.5: G4", "as now", "more shift");
    assertThat(ways(12).values()).containsOnlyOnce(true).hasSizeGreaterThan(3);
  }

  @Test
  void chosenWayIsKeptInAPlanOfOnesOwn() throws Exception {
    String way = other(12);
    String answer = post("fix", "moment", "12", "way", way).body();

    assertThat(answer)
        .contains("value=\"mine\" checked", "data-locked=\"12\"", "Demands on this plan");
    assertThat(answer.replaceFirst("(?s).*data-moments=\"([^\"]*)\".*", "$1").split(" "))
        .contains("12");
    assertThat(now(12)).isEqualTo(way);
    assertThat(saved()).contains("name: mine", "choose: partly", "fix: 4.3.5=" + way);
  }

  @Test
  void everyLineWithAnotherFingeringIsSentAtOnceOrLater() throws Exception {
    String way = other(12);
    String answer =
        visitor
            .post(
                address + "/fix",
                "revision=0&moment=12&way=" + encoded(way) + "&first=s-0&last=s-0")
            .body();
    assertThat(answer).contains("id=\"s-0\"", "/rest").doesNotContain("id=\"s-24\"");

    String rest = visitor.get(address + "/rest").body();
    assertThat(rest).contains("class=\"system\"").doesNotContain("id=\"s-0\"");
    assertThat(visitor.get(address + "/rest").body()).doesNotContain("class=\"system\"");
  }

  @Test
  void unlockedNoteIsPlannedAfresh() throws Exception {
    String before = now(12);
    post("fix", "moment", "12", "way", other(12));
    post("free", "moment", "12");

    assertThat(now(12)).isEqualTo(before);
    assertThat(saved()).contains("name: mine").doesNotContain("fix:");
  }

  @Test
  void digitChoosesAFingerAndANumeralAString() throws Exception {
    post("fix", "moment", "12", "way", "/4");
    assertThat(now(12)).contains("/4");
    post("fix", "moment", "12", "way", "III");
    assertThat(now(12)).startsWith("III/");
  }

  @Test
  void everyChangeCanBeUndoneAndDoneAgain() throws Exception {
    String before = now(12);
    String way = other(12);
    post("fix", "moment", "12", "way", way);
    post("plan", "plan", "third");
    assertThat(saved()).startsWith("score: demo.musicxml").contains("choose: third");

    post("undo");
    assertThat(now(12)).isEqualTo(way);
    post("undo");
    assertThat(now(12)).isEqualTo(before);
    assertThat(post("undo").body()).contains("id=\"undo\"");
    post("redo");
    assertThat(now(12)).isEqualTo(way);
    assertThat(saved()).contains("name: mine");
  }

  @Test
  void demandOnMeasuresIsKeptAndPriced() throws Exception {
    String answer = post("demand", "from", "4", "to", "7", "key", "stay", "value", "3").body();

    assertThat(answer).contains("<span>Keep the hand in 3rd position");
    assertThat(saved()).contains("stay: 3@4-7");
    assertThat(visitor.get(address + "/demands").body()).contains("without it:");

    post("drop", "key", "stay", "value", "3@4-7");
    assertThat(saved()).doesNotContain("stay:");
  }

  @Test
  void demandsThatContradictEachOtherAreShownTogether() throws Exception {
    post("demand", "from", "4", "to", "7", "key", "stay", "value", "3");
    String before = saved();
    HttpResponse<String> conflict =
        post("demand", "from", "5", "to", "6", "key", "stay", "value", "1");

    assertThat(conflict.statusCode()).isEqualTo(409);
    assertThat(conflict.headers().firstValue("HX-Retarget")).contains("#trouble");
    assertThat(conflict.body())
        .contains("No fingering of", "name=\"dropped\" value=\"stay=3@4-7\"", "instead");
    assertThat(saved()).isEqualTo(before);

    post("demand", "from", "5", "to", "6", "key", "stay", "value", "1", "dropped", "stay=3@4-7");
    assertThat(saved()).contains("stay: 1@5-6").doesNotContain("mine 2");
  }

  @Test
  void measuresAreFreedOfAllDemands() throws Exception {
    post("demand", "from", "4", "to", "7", "key", "stay", "value", "3");
    post("demand", "from", "9", "to", "12", "key", "avoid", "value", "open-strings");
    post("fix", "moment", "12", "way", now(12));
    post("clear", "from", "3", "to", "8");

    assertThat(saved()).contains("avoid: open-strings@9-12").doesNotContain("stay:", "fix:");
  }

  @Test
  void secondTabHearsOfTheChangeAndLosesNothing() throws Exception {
    post("plan", "plan", "first");
    revision = "0";
    String stale = post("plan", "plan", "third").body();

    assertThat(stale).contains("changed in another window", "value=\"first\" checked");
    assertThat(saved()).contains("choose: first");
  }

  @ParameterizedTest
  @CsvSource({
    "fix, moment=9999&way=II/4, note",
    "fix, moment=x&way=II/4, no such page",
    "fix, moment=12&way=XX/9, does not say",
    "demand, from=4&to=7&key=allow&value=3, no such page",
    "demand, from=900&to=901&key=stay&value=3, measures",
    "plan, plan=nothing, no plan of this name",
    "drop, key=stay, no such page"
  })
  void nonsenseIsASentenceAndChangesNothing(String what, String fields, String sentence)
      throws Exception {
    HttpResponse<String> answer = visitor.post(address + "/" + what, "revision=0&" + fields);

    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    assertThat(answer.body()).contains(sentence).doesNotContain("Exception", "unexpectedly");
    assertThat(files()).isEmpty();
  }

  @Test
  void graceNotesCannotBeFixedAndSaySo() throws Exception {
    HttpResponse<String> dropped =
        visitor.drop(
            "grace.abc",
            "X:1\nT:Grace\nM:4/4\nL:1/4\nK:D clef=alto\nD {F}G A d|\n"
                .getBytes(StandardCharsets.UTF_8));
    address = dropped.headers().firstValue("Location").orElseThrow();
    List<String> notes =
        Stream.of(1, 2)
            .map(
                moment -> {
                  try {
                    return visitor.get(address + "/note?moment=" + moment).body();
                  } catch (Exception e) {
                    throw new IllegalStateException(e);
                  }
                })
            .toList();

    assertThat(notes.get(0)).contains("A grace note follows", "disabled");
    assertThat(notes.get(1)).doesNotContain("A grace note follows");
  }
}
