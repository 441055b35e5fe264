package fingering.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableSet;
import fingering.music.Place;
import fingering.practice.Circle;
import fingering.practice.Circle.Kind;
import fingering.tables.FingeringException;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LessonCirclesTest {
  private static final Circle ONE = circle(Kind.SHIFT, 3, BigFraction.of(5, 2));
  private static final Circle TWO = circle(Kind.SHIFT, 4, BigFraction.of(7, 3));
  private static final Circle LOUD = circle(Kind.LONG_HAIRPIN, 4, BigFraction.ONE);
  private static final List<Circle> ALL = List.of(LOUD, ONE, TWO);

  private static Circle circle(Kind kind, int measure, BigFraction beat) {
    Place place =
        new Place(measure, Integer.toString(measure), beat.subtract(BigFraction.ONE), beat);
    return new Circle(kind, place, "text");
  }

  @Test
  void circlesAreNamedByPlaceAndKind() {
    assertThat(ALL)
        .extracting(Circle::name)
        .containsExactly("4.1 long-hairpin", "3.2.5 shift", "4.2.333 shift");
    assertThat(LessonCircles.ALL.of(ALL)).isEqualTo(ALL);
  }

  @Test
  void oneThingIsLeftOutAndComesBack() {
    LessonCircles without = LessonCircles.ALL.with(ONE.name(), false, ALL);
    assertThat(without.of(ALL)).containsExactly(LOUD, TWO);
    assertThat(without.with(ONE.name(), true, ALL)).isEqualTo(LessonCircles.ALL);
  }

  @Test
  void wholeKindIsLeftOutAndReplacesItsThings() {
    LessonCircles without =
        LessonCircles.ALL.with(ONE.name(), false, ALL).with("shift", false, ALL);
    assertThat(without.leftOut()).containsExactly("shift");
    assertThat(without.of(ALL)).containsExactly(LOUD);
    assertThat(without.with("shift", true, ALL)).isEqualTo(LessonCircles.ALL);
    assertThat(without.with("long-hairpin", false, ALL).of(ALL)).isEmpty();
  }

  @Test
  void oneThingOfAKindThatIsLeftOutComesBackAlone() {
    LessonCircles one = LessonCircles.ALL.with("shift", false, ALL).with(TWO.name(), true, ALL);
    assertThat(one.of(ALL)).containsExactly(LOUD, TWO);
    assertThat(one.leftOut()).containsExactly(ONE.name());
  }

  @ParameterizedTest
  @ValueSource(strings = {"loud", "12.1", "12 shift", "12.1 loud", "", "12.1  shift"})
  void otherNamesAreRefusedWithAnExample(String name) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new LessonCircles(false, ImmutableSet.of(name)))
        .withMessageContaining("such as 12.1 dynamic")
        .withMessageContaining("long-hairpin");
  }
}
