package fingering.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Movements;
import fingering.music.Place;
import fingering.musicxml.reading.PartInfo;
import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class FindingGroupTest {
  private static final PartInfo PART = new PartInfo(1, "P1", "Viola", Optional.empty(), false);

  private static Finding finding(
      FindingKind kind, Severity severity, int index, String measure, String reason) {
    Place place = new Place(index, measure, BigFraction.ZERO, BigFraction.ONE);
    return new Finding(
        kind,
        severity,
        PART,
        place,
        place,
        ImmutableList.of(place),
        ImmutableList.of(),
        reason,
        Optional.of("Change it."));
  }

  private static Finding trill(int measure, String reason) {
    return finding(
        FindingKind.TRILL_TOO_SHORT,
        Severity.RISKY,
        measure - 1,
        Integer.toString(measure),
        reason);
  }

  @Test
  void mostSevereFirstThenInTheOrderOfThePart() {
    List<FindingGroup> groups =
        FindingGroup.of(
            List.of(
                trill(1, "short."),
                finding(FindingKind.BOW_TOO_SHORT, Severity.RISKY, 1, "2", "long."),
                trill(3, "short."),
                finding(FindingKind.OUT_OF_RANGE, Severity.UNPLAYABLE, 8, "9", "low.")),
            Movements.ONE);
    assertThat(groups)
        .extracting(FindingGroup::kind)
        .containsExactly(
            FindingKind.OUT_OF_RANGE, FindingKind.TRILL_TOO_SHORT, FindingKind.BOW_TOO_SHORT);
    assertThat(groups.get(1).findings()).hasSize(2);
  }

  @Test
  void sameSentenceIsListedOnceWithAllItsMeasures() {
    FindingGroup group =
        FindingGroup.of(
                List.of(trill(12, "a."), trill(13, "b."), trill(14, "a."), trill(16, "a.")),
                Movements.ONE)
            .get(0);
    assertThat(group.sentences(3))
        .extracting(FindingGroup.Sentence::where)
        .containsExactly("m. 12, 14, 16", "m. 13, beat 1");
    assertThat(group.unlisted(3)).isEmpty();
  }

  @Test
  void firstSentencesAreListedAndTheMeasuresOfTheOthers() {
    FindingGroup group =
        FindingGroup.of(
                IntStream.rangeClosed(1, 9).mapToObj(m -> trill(m, m + ".")).toList(),
                Movements.ONE)
            .get(0);
    assertThat(group.sentences(3)).hasSize(3);
    assertThat(group.where(group.unlisted(3))).isEqualTo("m. 4, 5, 6, 7, 8, 9");
    assertThat(group.sentences(8)).as("one more is included").hasSize(9);
    assertThat(group.unlisted(8)).isEmpty();
  }

  @Test
  void measuresOfLaterMovementsAreMarkedAndLongListsAreCut() {
    List<Finding> movements =
        List.of(
            trill(48, "."),
            finding(FindingKind.TRILL_TOO_SHORT, Severity.RISKY, 60, "7", "."),
            finding(FindingKind.TRILL_TOO_SHORT, Severity.RISKY, 62, "9", "."));
    FindingGroup group =
        FindingGroup.of(movements, new Movements(ImmutableList.of(50, 55, 80))).get(0);
    assertThat(group.where(movements)).isEqualTo("m. 48; m. 7, 9 of the third movement");
    assertThat(group.where(movements.subList(1, 2)))
        .isEqualTo("m. 7, beat 1 of the third movement");
    List<Finding> many = IntStream.rangeClosed(1, 30).mapToObj(m -> trill(m, ".")).toList();
    assertThat(FindingGroup.of(many, Movements.ONE).get(0).where(many))
        .startsWith("m. 1, 2, 3")
        .endsWith(", 20 and 10 more");
  }

  /** Numbers that begin again at 1, or at 0 with a pickup, begin a movement. */
  @Test
  void movementsBeginWhereMeasureNumbersBeginAgain() {
    String[] numbers = {"0", "1", "2", "3", "X1", "4", "1", "2", "0", "1", "2"};
    List<Measure> measures =
        IntStream.range(0, numbers.length)
            .mapToObj(
                i ->
                    new Measure(
                        i, numbers[i], BigFraction.of(4 * i), BigFraction.of(4), 0, 4, 4, ""))
            .toList();
    assertThat(Movements.of(measures)).isEqualTo(new Movements(ImmutableList.of(6, 8)));
    assertThat(Movements.of(measures).phrase(5)).isEmpty();
    assertThat(Movements.of(measures).phrase(6)).isEqualTo(" of the second movement");
  }
}
