package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.DemandParser;
import fingering.demand.ShowPosition;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.PrintedString;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Words such as 'sul G' in plans. */
class PrintedStringPlansTest {
  /** The same music with words for a string over some of its notes. */
  private static Passage sul(int string, Passage p, Integer... notes) {
    Set<Integer> wanted = Set.of(notes);
    List<Note> all = p.notes();
    List<Note> held =
        java.util.stream.IntStream.range(0, all.size())
            .filter(wanted::contains)
            .mapToObj(all::get)
            .toList();
    PrintedString asked =
        new PrintedString(
            "sul",
            string,
            held.get(0).place(),
            held.get(held.size() - 1).place(),
            PrintedString.End.REST,
            held.stream().map(Note::address).collect(ImmutableSet.toImmutableSet()));
    return new Passage(
        p.title(),
        p.partId(),
        p.partName(),
        p.instrument(),
        p.tempi(),
        p.measures(),
        p.moments(),
        p.remarks(),
        ImmutableList.of(asked));
  }

  private static Plan plan(Passage passage, Brief brief) {
    return Planner.of(passage, StandardRules.commonPractice()).plan(brief);
  }

  private static List<Integer> strings(Plan plan) {
    return plan.notes().stream().map(note -> note.placement().string()).toList();
  }

  private static final Passage LINE = Music.violin().notes("D4/1 E4/1 F4/1 G4/1 A4/1 B4/1");

  @Test
  void theNotesUnderTheWordsAreOnTheStringAndTheOthersAreFree() {
    Plan plan = plan(sul(4, LINE, 1, 2, 3), Brief.free("free"));
    assertThat(strings(plan).subList(1, 4)).containsOnly(4);
    assertThat(strings(plan).get(5)).isNotEqualTo(4);
    assertThat(StringDeviation.of(plan)).isEmpty();
    assertThat(strings(plan(LINE, Brief.free("free"))).subList(1, 4)).doesNotContain(4);
  }

  // The plan is as cheap as the one with the same demand.
  @Test
  void printedWordsCostAsMuchAsTheSameDemand() {
    DemandParser text = DemandParser.of(LINE.instrument());
    Brief asked =
        Brief.builder("asked")
            .addDemand(text.strings("IV@1"))
            .addDemand(text.strings("IV@2"))
            .build();
    assertThat(plan(sul(4, LINE, 0, 1, 2, 3, 4, 5), Brief.free("free")).total())
        .isEqualTo(plan(LINE, asked).total());
  }

  @Test
  void aNoteBelowTheStringAndTwoAtOnceAreFreeAndReported() {
    Passage passage = sul(3, Music.violin().notes("D4/1 B3/1 E4+B4/1 F4/1"), 0, 1, 2, 3, 4);
    Plan plan = plan(passage, Brief.free("free"));
    assertThat(strings(plan)).startsWith(3, 4).endsWith(3);
    assertThat(StringDeviation.of(plan))
        .extracting(StringDeviation::text)
        .singleElement()
        .asString()
        .matches(
            "'free' leaves the string of 'sul' in m. 1 for B3 in measure 1, beat 2 \\(below the"
                + " string\\), [EB]4 in measure 1, beat 3 \\(more than one note at once\\)\\.");
  }

  @Test
  void demandsOverridePrintedWords() {
    DemandParser text = DemandParser.of(LINE.instrument());
    Brief asked = Brief.builder("asked").addDemand(text.fix("1.2=III/1")).build();
    Plan plan = plan(sul(4, LINE, 1, 2), asked);
    assertThat(strings(plan).subList(1, 3)).containsExactly(3, 4);
    assertThat(StringDeviation.of(plan))
        .extracting(StringDeviation::text)
        .containsExactly(
            "'asked' leaves the string of 'sul' in m. 1 for E4 in measure 1, beat 2 (out of reach on"
                + " it, or ruled out by your demands).");
  }

  @Test
  void wordsThatRuleOutASkillAreNamed() {
    Brief asked = Brief.builder("asked").addDemand(new ShowPosition(Position.FIRST, 5)).build();
    Passage low = Music.violin().notes("D4/1 E4/1 F4/1 G4/1 B4/1 C5/1");
    assertThat(plan(low, asked).notesByPosition().get(Position.FIRST)).isEqualTo(5);
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(sul(4, low, 2, 3, 4), asked))
        .withMessage(
            "'asked' cannot meet its demands and also follow the strings printed in the part"
                + " ('sul' in m. 1–2); ask for less, or ignore the printed words.");
    // The words are not blamed for a demand that is infeasible without them.
    Brief more = Brief.builder("more").addDemand(new ShowPosition(Position.FIRST, 9)).build();
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(sul(4, low, 2, 3, 4), more))
        .withMessageContaining("can show 1st position in 9 stopped notes");
  }

  @Test
  void aHeldVoiceKeepsItsString() {
    Passage passage = sul(4, Music.violin().notes("D4/1 G4*2+B3/1 C4/1"), 2, 3);
    Plan plan = plan(passage, Brief.free("free"));
    assertThat(plan.notes().get(1).note().written()).hasToString("B3");
    assertThat(plan.notes().get(3).note().written()).hasToString("C4");
    assertThat(plan.notes().get(3).placement().string()).isEqualTo(4);
  }
}
