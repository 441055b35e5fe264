package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.EveryRule;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import org.junit.jupiter.api.Test;

class PathFinderTest {
  // J. S. Bach, Suite I for violoncello, Prelude, opening measures, set for viola an octave higher;
  // from memory, public domain.
  private static final String BACH =
      """
      G3/0.25 ~D4/0.25 ~B4/0.25 A4/0.25 B4/0.25 D4/0.25 B4/0.25 D4/0.25
      G3/0.25 ~D4/0.25 ~B4/0.25 A4/0.25 B4/0.25 D4/0.25 B4/0.25 D4/0.25
      G3/0.25 ~E4/0.25 ~C5/0.25 B4/0.25 C5/0.25 E4/0.25 C5/0.25 E4/0.25
      G3/0.25 ~E4/0.25 ~C5/0.25 B4/0.25 C5/0.25 E4/0.25 C5/0.25 E4/0.25
      G3/0.25 ~F#4/0.25 ~C5/0.25 B4/0.25 C5/0.25 F#4/0.25 C5/0.25 F#4/0.25
      G3/0.25 ~F#4/0.25 ~C5/0.25 B4/0.25 C5/0.25 F#4/0.25 C5/0.25 F#4/0.25
      G3/0.25 ~G4/0.25 ~B4/0.25 A4/0.25 B4/0.25 G4/0.25 B4/0.25 G4/0.25
      G3/0.25 ~G4/0.25 ~B4/0.25 A4/0.25 B4/0.25 G4/0.25 B4/0.25 F#4/0.25
      G3/0.25 ~E4/0.25 ~B4/0.25 A4/0.25 B4/0.25 G4/0.25 F#4/0.25 G4/0.25
      E4/0.25 ~G4/0.25 ~F#4/0.25 G4/0.25 B3/0.25 D4/0.25 C#4/0.25 B3/0.25
      C#4/0.25 ~G4/0.25 ~A4/0.25 G4/0.25 A4/0.25 G4/0.25 A4/0.25 G4/0.25
      C#4/0.25 ~G4/0.25 ~A4/0.25 G4/0.25 A4/0.25 G4/0.25 A4/0.25 G4/0.25
      """;

  // 'Twinkle, twinkle' (Ah! vous dirai-je, maman), French folk tune; from memory, public domain.
  private static final String FOLK_TUNE =
      "D4/1 D4/1 A4/1 A4/1 B4/1 B4/1 A4/2 G4/1 G4/1 F#4/1 F#4/1 E4/1 E4/1 D4/2 "
          + "A4/1 A4/1 G4/1 G4/1 F#4/1 F#4/1 E4/2 A4/1 A4/1 G4/1 G4/1 F#4/1 F#4/1 E4/2";

  @Test
  void aPreludeOfBrokenChordsCostsWhatDijkstraFinds() {
    Passage passage = Music.viola().tempo("quarter=66").notes(BACH);
    assertThat(passage.moments()).hasSize(96);
    for (Scoring scoring : ImmutableList.of(StandardRules.commonPractice(), EveryRule.scoring())) {
      LayeredGraph graph = Thinned.all(passage, scoring);
      Path path = PathFinder.best(graph, Requirement.NONE).orElseThrow();
      assertThat(path.cost()).isEqualTo(ReferenceGraph.of(graph).cheapest()).isPositive();
      assertThat(path.grips()).hasSize(96);
    }
  }

  @Test
  void aFolkTuneCostsWhatDijkstraFindsOnViolinViolaAndCello() {
    for (String instrument : ImmutableList.of("violin", "viola", "cello")) {
      Passage passage = Music.on(instrument).tempo("quarter=100").notes(FOLK_TUNE);
      for (Scoring scoring :
          ImmutableList.of(StandardRules.commonPractice(), EveryRule.scoring())) {
        LayeredGraph graph = Thinned.all(passage, scoring);
        Path path = PathFinder.best(graph, Requirement.NONE).orElseThrow();
        assertThat(path.cost()).as(instrument).isEqualTo(ReferenceGraph.of(graph).cheapest());
      }
    }
  }

  @Test
  void twoSearchesOfOneMelodyAgreeGripByGrip() {
    Passage passage = Music.viola().notes(BACH);
    Path first = PathFinder.best(Thinned.all(passage), Requirement.NONE).orElseThrow();
    Path again = PathFinder.best(Thinned.all(passage), Requirement.NONE).orElseThrow();
    assertThat(again).isEqualTo(first);
  }

  @Test
  void ofEqualGripsTheFirstWins() {
    Passage passage = Music.viola().notes("C3/0.25");
    // An open string costs the same wherever the hand is.
    Path path = PathFinder.best(Thinned.all(passage), Requirement.NONE).orElseThrow();
    assertThat(path.grips().get(0).frame().index()).isZero();
  }

  /** A rule that claims to look back two moments. */
  private static final class ThreeNotes implements NoteRule {
    @Override
    public String id() {
      return "three-notes";
    }

    @Override
    public String name() {
      return "Three notes";
    }

    @Override
    public String explanation() {
      return "Three notes are judged together.";
    }

    @Override
    public String unit() {
      return "note";
    }

    @Override
    public int lookBack() {
      return 2;
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      return 1;
    }
  }

  @Test
  void aRuleThatLooksBackTwoMomentsIsRefusedByBothSearches() {
    Scoring scoring =
        Scoring.of(ImmutableList.of(new ThreeNotes()), Weights.parse("w", "three-notes: 1"));
    LayeredGraph all = Thinned.all(Music.viola().notes("C3/1 D3/1"));
    LayeredGraph graph = new LayeredGraph(all.moments(), all.grips(), scoring, Penalty.NONE);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PathFinder.best(graph, Requirement.NONE))
        .withMessageContaining("looks back 2 moments")
        .withMessageContaining("remembers only 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PathFinder.best(graph, RequiredStays.in(Position.THIRD, 2), 5))
        .withMessageContaining("looks back 2 moments");
  }

  @Test
  void thereIsNoPathForAStayThatNoFingeringShows() {
    LayeredGraph graph = Thinned.all(Music.viola().notes("C3/1 G3/1"));
    assertThat(PathFinder.best(graph, RequiredStays.in(Position.THIRD, 2))).isEmpty();
  }

  @Test
  void closedGripsStayClosedWhenMoreAreClosed() {
    LayeredGraph all = Thinned.all(Music.viola().notes("C3/1 D3/1"));
    NodeFilter closed =
        all.excluding((m, grip) -> grip == 1).excluding((m, grip) -> grip == 2).excluded();
    assertThat(closed.at(0, 0)).isFalse();
    assertThat(closed.at(0, 1)).isTrue();
    assertThat(closed.at(0, 2)).isTrue();
  }

  @Test
  void aGraphNeedsMomentsAndAsManyListsOfGrips() {
    LayeredGraph all = Thinned.all(Music.viola().notes("C3/1 D3/1"));
    Scoring scoring = all.scoring();
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new LayeredGraph(all.moments(), all.grips().subList(0, 1), scoring, Penalty.NONE));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new LayeredGraph(ImmutableList.of(), ImmutableList.of(), scoring, Penalty.NONE));
  }

  /** A rule that charges every note the same. */
  private record Expensive(long amount) implements NoteRule {
    @Override
    public String id() {
      return "expensive";
    }

    @Override
    public String name() {
      return "Expensive";
    }

    @Override
    public String explanation() {
      return "Every note costs the same.";
    }

    @Override
    public String unit() {
      return "note";
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      return amount;
    }
  }

  private static LayeredGraph expensive(String notes, Penalty penalty) {
    // Just below 2^44 points a note.
    Scoring scoring =
        Scoring.of(
            ImmutableList.of(new Expensive(17_592_203)), Weights.parse("w", "expensive: 999999"));
    LayeredGraph all = Thinned.all(Music.viola().notes(notes));
    return new LayeredGraph(all.moments(), all.grips(), scoring, penalty);
  }

  @Test
  void aCostJustBelowTheLimitDoesNotOutweighAPenalty() {
    Penalty penalty = (m, grip) -> grip.top().string() == 1 ? 0 : 524_286;
    Path path = PathFinder.best(expensive("E4/1", penalty), Requirement.NONE).orElseThrow();
    assertThat(path.cost()).isEqualTo(17_592_203L * 999_999);
    assertThat(path.penalty()).isEqualTo(524_286);
  }

  @Test
  void aCostThatCouldOutweighAPenaltyIsRefused() {
    LayeredGraph graph = expensive("E4/1 E4/1", Penalty.NONE);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PathFinder.best(graph, Requirement.NONE))
        .withMessage(
            "with these weights a plan may cost more than 17592186044415 points;"
                + " divide all of them by ten");
  }

  @Test
  void penaltiesThatDoNotFitIntoASumAreRefused() {
    LayeredGraph all = Thinned.all(Music.viola().notes("E4/1 E4/1"));
    LayeredGraph graph =
        new LayeredGraph(all.moments(), all.grips(), all.scoring(), (m, grip) -> 262_144);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PathFinder.best(graph, Requirement.NONE))
        .withMessage(
            "the passage is too long for the preferences of this brief; plan fewer measures");
  }

  @Test
  void aHundredPathsCanBeRequested() {
    LayeredGraph graph = Thinned.all(Music.viola().notes("E4/1 F4/1 G4/1"));
    assertThat(PathFinder.best(graph, Requirement.NONE, PathFinder.MAX_PATHS)).hasSize(100);
  }
}
