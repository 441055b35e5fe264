package fingering.musicxml.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Measure;
import fingering.musicxml.element.Meter;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Counting time as the MusicXML 4.0 reference defines durations, backup and forward. */
class PartClockTest {
  private final Faults faults = new Faults();
  private final PartClock clock = new PartClock(faults);

  @BeforeEach
  void beginsWithFourDivisions() {
    clock.beginMeasure("1");
    clock.divisions(BigDecimal.valueOf(4));
  }

  private static BigDecimal divisions(long count) {
    return BigDecimal.valueOf(count);
  }

  private void note(long duration) {
    clock.note(clock.length(divisions(duration)).orElseThrow(), false);
  }

  private void chordNote(long duration) {
    clock.note(clock.length(divisions(duration)).orElseThrow(), true);
  }

  private static BigFraction quarters(int numerator, int denominator) {
    return BigFraction.of(numerator, denominator);
  }

  @Test
  void notesFollowEachOther() {
    note(4);
    note(2);
    assertThat(clock.here()).isEqualTo(quarters(3, 2));
    clock.divisions(divisions(3));
    note(1);
    assertThat(clock.here()).isEqualTo(quarters(11, 6));
  }

  @Test
  void notesOfChordBeginWithItsFirst() {
    note(4);
    note(4);
    assertThat(clock.onset(true)).isEqualTo(quarters(1, 1));
    chordNote(12);
    chordNote(2);
    assertThat(clock.onset(false)).isEqualTo(quarters(2, 1));
    // The measure is as long as the longest note of the chord.
    assertThat(clock.endMeasure(0, "").length()).isEqualTo(quarters(4, 1));
  }

  @Test
  void backupEndsAtTheStartOfTheMeasureAndShortensNothing() {
    note(8);
    clock.forward(divisions(4));
    clock.backup(divisions(100));
    assertThat(clock.atMeasureStart()).isTrue();
    note(2);
    assertThat(clock.endMeasure(0, "").length()).isEqualTo(quarters(3, 1));
  }

  @Test
  void emptyMeasureHasItsFullLength() {
    clock.meter(new Meter(6, 8));
    assertThat(clock.endMeasure(2, "A"))
        .isEqualTo(new Measure(0, "1", BigFraction.ZERO, quarters(3, 1), 2, 6, 8, "A"));
    clock.beginMeasure("1a");
    assertThat(clock.measure()).isEqualTo(1);
    assertThat(clock.number()).isEqualTo("1a");
    assertThat(clock.start()).isEqualTo(quarters(3, 1));
    assertThat(clock.atMeasureStart()).isTrue();
  }

  @Test
  void meterChangedLaterAppliesFromTheNextMeasureOn() {
    note(4);
    clock.meter(new Meter(3, 4));
    assertThat(clock.endMeasure(0, "").beats()).isEqualTo(4);
    clock.beginMeasure("2");
    assertThat(clock.endMeasure(0, "").beats()).isEqualTo(3);
  }

  @Test
  void offsetStaysWithinTheMeasure() {
    note(6);
    assertThat(clock.offset(divisions(-2))).isEqualTo(quarters(1, 1));
    assertThat(clock.offset(new BigDecimal("0.5"))).isEqualTo(quarters(13, 8));
    assertThat(clock.offset(divisions(-7))).isEqualTo(BigFraction.ZERO);
    assertThat(clock.here()).isEqualTo(quarters(3, 2));
  }

  @Test
  void unreadableLengthsAreEmpty() {
    assertThat(clock.length(null)).isEmpty();
    assertThat(clock.length(divisions(-1))).isEmpty();
    assertThat(clock.length(new BigDecimal("1e999999999"))).isEmpty();
    assertThat(clock.length(divisions(400_000))).contains(quarters(100_000, 1));
    assertThat(clock.length(divisions(400_001))).isEmpty();
  }

  @Test
  void unreadableElementsAreReportedWithTheirPlaces() {
    note(6);
    clock.forward(divisions(400_001));
    clock.forward(new BigDecimal("1e999999999"));
    clock.backup(null);
    clock.divisions(BigDecimal.ZERO);
    clock.suggests(divisions(6), quarters(2, 1));

    assertThat(clock.here()).isEqualTo(BigFraction.ZERO);
    assertThat(clock.length(divisions(3))).contains(quarters(1, 1));
    assertThat(faults.remarks())
        .containsExactly(
            "a backup has no readable duration and is read to the start of the measure: measure 1, beat 2.5",
            "2 forwards have no readable duration and are without length: measure 1, beat 2.5",
            "a number of divisions is missing or not readable and is derived from printed note values: measure 1, beat 1");
  }

  @Property(tries = 200)
  void backupAndForwardCancelOut(
      @ForAll @IntRange(min = 1, max = 960) int divisions,
      @ForAll @IntRange(min = 0, max = 4000) int on,
      @ForAll @IntRange(min = 0, max = 4000) int back) {
    PartClock any = new PartClock(new Faults());
    any.beginMeasure("1");
    any.divisions(divisions(divisions));
    any.forward(divisions(on));
    any.backup(divisions(back));
    assertThat(any.here()).isEqualTo(quarters(Math.max(0, on - back), divisions));
    any.forward(divisions(back));
    any.forward(divisions(on));
    assertThat(any.endMeasure(0, "").length())
        .isEqualTo(on + back == 0 ? quarters(4, 1) : quarters(Math.max(on, back) + on, divisions));
  }
}
