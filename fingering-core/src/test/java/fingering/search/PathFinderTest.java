package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
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
  void aWholeEtudeOfBrokenChordsCostsWhatDijkstraFinds() {
    Passage passage = Music.viola().tempo("quarter=66").notes(BACH);
    assertThat(passage.moments()).hasSize(96);
    LayeredGraph layers = Thinned.all(passage);
    Path path = PathFinder.best(layers, Requirement.NONE).orElseThrow();
    assertThat(path.cost()).isEqualTo(LayerGraph.of(layers).cheapest()).isPositive();
    assertThat(path.grips()).hasSize(96);
  }

  @Test
  void aFolkTuneCostsWhatDijkstraFindsOnViolinViolaAndCello() {
    for (String instrument : ImmutableList.of("violin", "viola", "cello")) {
      LayeredGraph layers = Thinned.all(Music.on(instrument).tempo("quarter=100").notes(FOLK_TUNE));
      Path path = PathFinder.best(layers, Requirement.NONE).orElseThrow();
      assertThat(path.cost()).as(instrument).isEqualTo(LayerGraph.of(layers).cheapest());
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
  void amongEqualsTheEarlierGripWins() {
    Passage passage = Music.viola().notes("C3/0.25");
    // An open string costs the same wherever the hand is.
    Path path = PathFinder.best(Thinned.all(passage), Requirement.NONE).orElseThrow();
    assertThat(path.grips().get(0).frame().index()).isZero();
  }

  /** A rule that judges three notes at a time. */
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
  void aRuleThatLooksBackTwoNotesIsRefusedWhetherOrNotThereIsSomethingToFind() {
    Scoring scoring =
        Scoring.of(ImmutableList.of(new ThreeNotes()), Weights.parse("w", "three-notes: 1"));
    LayeredGraph all = Thinned.all(Music.viola().notes("C3/1 D3/1"));
    LayeredGraph layers = new LayeredGraph(all.moments(), all.grips(), scoring, Penalty.NONE);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PathFinder.best(layers, Requirement.NONE))
        .withMessageContaining("looks back 2 moments")
        .withMessageContaining("keeps 1");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PathFinder.best(layers, RequiredStays.in(Position.THIRD, 2), 5))
        .withMessageContaining("looks back 2 moments");
  }

  @Test
  void aStayThatNoFingeringShowsIsNotFound() {
    LayeredGraph layers = Thinned.all(Music.viola().notes("C3/1 G3/1"));
    assertThat(PathFinder.best(layers, RequiredStays.in(Position.THIRD, 2))).isEmpty();
  }

  @Test
  void whatIsClosedOnceStaysClosedWhenMoreIs() {
    LayeredGraph all = Thinned.all(Music.viola().notes("C3/1 D3/1"));
    NodeFilter closed =
        all.closing((m, grip) -> grip == 1).closing((m, grip) -> grip == 2).closed();
    assertThat(closed.at(0, 0)).isFalse();
    assertThat(closed.at(0, 1)).isTrue();
    assertThat(closed.at(0, 2)).isTrue();
  }

  @Test
  void layersWithoutMomentsOrOfAnotherNumberAreRefused() {
    LayeredGraph all = Thinned.all(Music.viola().notes("C3/1 D3/1"));
    Scoring scoring = all.scoring();
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(
            () ->
                new LayeredGraph(all.moments(), all.grips().subList(0, 1), scoring, Penalty.NONE));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(
            () -> new LayeredGraph(ImmutableList.of(), ImmutableList.of(), scoring, Penalty.NONE));
  }

  @Test
  void aHundredFingeringsMayBeAskedFor() {
    LayeredGraph layers = Thinned.all(Music.viola().notes("E4/1 F4/1 G4/1"));
    assertThat(PathFinder.best(layers, Requirement.NONE, PathFinder.MOST)).hasSize(100);
  }
}
