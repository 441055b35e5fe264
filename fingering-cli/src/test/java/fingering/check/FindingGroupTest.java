package fingering.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
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
        kind, severity, PART, place, place, ImmutableList.of(), reason, Optional.of("Change it."));
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
                finding(FindingKind.OUT_OF_RANGE, Severity.UNPLAYABLE, 8, "9", "low.")));
    assertThat(groups)
        .extracting(FindingGroup::kind)
        .containsExactly(
            FindingKind.OUT_OF_RANGE, FindingKind.TRILL_TOO_SHORT, FindingKind.BOW_TOO_SHORT);
    assertThat(groups.get(1).findings()).hasSize(2);
  }

  @Test
  void sameSentenceIsListedOnceWithAllItsMeasures() {
    FindingGroup group =
        FindingGroup.of(List.of(trill(12, "a."), trill(13, "b."), trill(14, "a."), trill(16, "a.")))
            .get(0);
    assertThat(group.sentences(3))
        .extracting(FindingGroup.Sentence::where)
        .containsExactly("m. 12, 14, 16", "m. 13, beat 1");
    assertThat(group.unlisted(3)).isEmpty();
  }

  @Test
  void firstSentencesAreListedAndTheMeasuresOfTheOthers() {
    FindingGroup group =
        FindingGroup.of(IntStream.rangeClosed(1, 9).mapToObj(m -> trill(m, m + ".")).toList())
            .get(0);
    assertThat(group.sentences(3)).hasSize(3);
    assertThat(FindingGroup.where(group.unlisted(3))).isEqualTo("m. 4, 5, 6, 7, 8, 9");
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
    assertThat(FindingGroup.where(movements)).isEqualTo("m. 48; later m. 7, 9");
    assertThat(
            FindingGroup.where(IntStream.rangeClosed(1, 30).mapToObj(m -> trill(m, ".")).toList()))
        .startsWith("m. 1, 2, 3")
        .endsWith(", 20 and 10 more");
  }
}
