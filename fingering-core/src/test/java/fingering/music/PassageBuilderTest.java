package fingering.music;

import static fingering.music.BeatUnit.EIGHTH;
import static fingering.music.BeatUnit.HALF;
import static fingering.music.BeatUnit.QUARTER;
import static fingering.music.BeatUnit.SIXTEENTH;
import static fingering.music.BeatUnit.WHOLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.music.builder.PassageBuilder;
import fingering.tables.FingeringException;
import fingering.tables.Instruments;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PassageBuilderTest {
  private static PassageBuilder on(String instrument) {
    return PassageBuilder.of(Instruments.standard().named(instrument));
  }

  private static Arguments refused(String message, Consumer<PassageBuilder> music) {
    return Arguments.of(message, music);
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        refused(
            "Measure 2, beat 3: a half note does not fit, because the measure of 3/4 has 1 quarter"
                + " left; write two notes with tie() between them, or change the meter.",
            b -> b.meter(3, 4).note("C4", HALF.dotted()).note("D4", HALF).note("E4", HALF)),
        refused(
            "Measure 1, beat 7: a half rest does not fit, because the measure of 7/8 has 1/2"
                + " quarter left; write two rests, or change the meter.",
            b -> b.meter(7, 8).note("C4", HALF.dotted()).rest(HALF)),
        refused(
            "Measure 0, beat 3: a half note does not fit, because the pickup has 1 quarter left;"
                + " write two notes with tie() between them, or change the meter.",
            b -> b.meter(3, 4).pickup(QUARTER).note("C4", HALF)),
        refused(
            "Measure 1, beat 9: an eighth note does not fit, because the measure of 9/16 has 1/4"
                + " quarter left; write two notes with tie()",
            b -> b.meter(9, 16).note("C4", HALF).note("D4", EIGHTH)),
        refused(
            "Measure 1, beat 4.83: an eighth note does not fit, because the measure of 4/4 has 1/6"
                + " quarter left; move the tuplet to the next measure, or change the meter.",
            b ->
                b.note("C4", HALF.dotted())
                    .note("C4", EIGHTH)
                    .tuplet(3, 2, t -> t.notes(EIGHTH, "D4", "E4", "F4"))),
        refused(
            "Measure 1, beat 1: 'B-4' has the octave -4, not -1 to 10; a flat is written b, such as"
                + " Bb4.",
            b -> b.note("B-4", QUARTER)),
        refused(
            "Measure 1, beat 2: 'H4' is not a pitch; write letter",
            b -> b.note("C4", QUARTER).note("H4", QUARTER)),
        refused(
            "Measure 1, beat 2: no note continues the tie from C4; repeat that pitch, or leave out"
                + " tie().",
            b -> b.note("C4", QUARTER).tie().note("D4", QUARTER)),
        refused(
            "Measure 1, beat 2: a rest follows tie(); add the note that the tie leads to, or leave"
                + " out tie().",
            b -> b.note("C4", QUARTER).tie().rest(QUARTER)),
        refused(
            "Measure 1, beat 2: a grace note follows tie()",
            b -> b.note("C4", QUARTER).tie().grace("D4")),
        refused("Measure 2, beat 1: the end follows tie()", b -> b.note("C4", WHOLE).tie().build()),
        refused(
            "Measure 1, beat 1: a rest follows grace notes; add the note that they belong to.",
            b -> b.grace("C4").rest(QUARTER)),
        refused(
            "Measure 2, beat 1: the end follows grace notes",
            b -> b.note("C4", WHOLE).grace("C4").build()),
        refused("Measure 1, beat 1: tie() comes after the note", PassageBuilder::tie),
        refused("Measure 1, beat 2: tie() comes after the note", b -> b.rest(QUARTER).tie()),
        refused("Measure 1, beat 1: tie() comes after the note", b -> b.grace("C4").tie()),
        refused(
            "Measure 1, beat 2: the meter can change only at the start of a measure.",
            b -> b.note("C4", QUARTER).meter(3, 4)),
        refused(
            "Measure 1, beat 2: the key signature can change only at the start of a measure.",
            b -> b.note("C4", QUARTER).key(1)),
        refused("Measure 1, beat 1: a key signature of -8", b -> b.key(-8)),
        refused("Measure 1, beat 1: 4/3 is not a meter", b -> b.meter(4, 3)),
        refused("Measure 1, beat 1: 0/4 is not a meter", b -> b.meter(0, 4)),
        refused("Measure 1, beat 1: 'fast' is not a tempo", b -> b.tempo("fast")),
        refused("Measure 1, beat 1: a pickup of 4 quarters is not shorter", b -> b.pickup(WHOLE)),
        refused(
            "Measure 0, beat 3: a pickup of 2 quarters is not shorter than a measure; set the"
                + " meter before the pickup.",
            b -> b.pickup(HALF).meter(2, 4)),
        refused(
            "Measure 1, beat 2: a pickup comes before all notes and rests.",
            b -> b.note("C4", QUARTER).pickup(QUARTER)),
        refused(
            "Measure 0, beat 3.5: the pickup is not full, because the pickup has 1/2 quarter",
            b -> b.meter(3, 4).pickup(QUARTER).note("C4", EIGHTH).build()),
        refused(
            "Measure 1, beat 2: no bar line is here, because the measure of 4/4 has 3 quarters"
                + " left; add notes or rests.",
            b -> b.note("C4", QUARTER).bar()),
        refused(
            "Measure 1, beat 1.67: the tuplet of 3 in the time of 2 is not full",
            b -> b.tuplet(3, 2, t -> t.notes(EIGHTH, "C4", "D4"))),
        refused("Measure 1, beat 1: a tuplet of 0 in the time of 2", b -> b.tuplet(0, 2, t -> {})),
        refused("Measure 1, beat 1.5: a slur joins at least two notes", b -> b.slur(EIGHTH, "C4")),
        refused("Measure 1, beat 1: a chord needs a note", b -> b.chord(QUARTER)),
        refused(
            "Measure 1, beat 2: marks(…) come after the note",
            b -> b.rest(QUARTER).marks(Marks.NONE)),
        refused("Measure 1, beat 1: the passage has no notes", PassageBuilder::build));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void aMistakeIsRefusedWhereItIsMade(String message, Consumer<PassageBuilder> music) {
    assertThatThrownBy(() -> music.accept(on("viola")))
        .isInstanceOf(FingeringException.class)
        .hasMessageStartingWith(message)
        .hasMessageEndingWith(".");
  }

  @Test
  void aPickupIsMeasureZeroAndEndsWithTheLastBeat() {
    Passage passage =
        on("viola")
            .meter(3, 4)
            .pickup(QUARTER)
            .note("D4", QUARTER)
            .notes(QUARTER, "G4", "A4", "B4")
            .build();
    assertThat(passage.moments())
        .extracting(moment -> moment.place().toString())
        .containsExactly(
            "measure 0, beat 3", "measure 1, beat 1", "measure 1, beat 2", "measure 1, beat 3");
  }

  @Test
  void aTieOverTheBarLineMakesOneNote() {
    Passage passage = on("viola").note("D4", WHOLE).tie().note("D4", HALF).note("E4", HALF).build();
    assertThat(passage.notes()).hasSize(2);
    assertThat(passage.notes().get(0).length()).isEqualTo(BigFraction.of(6));
  }

  @Test
  void aNoteTiedIntoAChordIsHeld() {
    Passage passage = on("viola").note("D4", HALF).tie().chord(HALF, "D4", "B4").build();
    Moment second = passage.moments().get(1);
    assertThat(second.starting())
        .extracting(note -> note.written().toString())
        .containsExactly("B4");
    assertThat(second.held()).extracting(note -> note.written().toString()).containsExactly("D4");
  }

  @Test
  void theDoubleBassSoundsAnOctaveLower() {
    Note note = on("double bass").note("E2", WHOLE).build().notes().get(0);
    assertThat(note.written().toString()).isEqualTo("E2");
    assertThat(note.sounding().toString()).isEqualTo("E1");
  }

  @Test
  void styleAndMarksAreKept() {
    Passage passage =
        on("viola")
            .style(PlayingStyle.DETACHED)
            .note("D4", QUARTER)
            .marks(Marks.NONE.withFinger(Optional.of("4")))
            .slur(SIXTEENTH, "E4", "F4")
            .pizzicato()
            .note("G4", EIGHTH)
            .arco()
            .note("A4", HALF)
            .build();
    assertThat(passage.moments())
        .extracting(Moment::style)
        .containsExactly(
            PlayingStyle.DETACHED,
            PlayingStyle.PLAIN,
            PlayingStyle.PLAIN,
            PlayingStyle.PLAIN,
            PlayingStyle.DETACHED);
    assertThat(passage.moments())
        .extracting(Moment::pizzicato)
        .containsExactly(false, false, false, true, false);
    assertThat(passage.notes().get(0).marks().finger()).contains("4");
  }

  @Test
  void aBuilderGoesOnAfterBuilding() {
    PassageBuilder builder = on("viola").note("D4", HALF);
    Passage shorter = builder.build();
    Passage longer = builder.note("E4", HALF).bar().build();
    assertThat(shorter.notes()).hasSize(1);
    assertThat(longer.notes()).hasSize(2);
    assertThat(shorter.measures().get(0).length()).isEqualTo(BigFraction.of(2));
    assertThat(longer.measures().get(0).length()).isEqualTo(BigFraction.of(4));
  }

  @Test
  void lengthsHaveUpToTwoDots() {
    assertThat(EIGHTH.dotted().dotted().quarters()).isEqualTo(BigFraction.of(7, 8));
    assertThatThrownBy(() -> EIGHTH.dotted().dotted().dotted())
        .isInstanceOf(FingeringException.class);
  }
}
