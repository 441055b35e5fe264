package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument.HandKind;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InstrumentsTest {
  private final Instruments instruments = Instruments.standard();

  @Test
  void thereAreFourInstrumentsViolinFirst() {
    assertThat(instruments.all())
        .extracting(Instrument::id)
        .containsExactly("violin", "viola", "cello", "bass");
  }

  // S. Adler, The Study of Orchestration, from memory
  @ParameterizedTest
  @CsvSource({
    "violin, E5 A4 D4 G3",
    "viola, A4 D4 G3 C3",
    "cello, A3 D3 G2 C2",
    "bass, G2 D2 A1 E1"
  })
  void theOpenStringsAreTunedInFifthsAndTheBassInFourths(String id, String open) {
    assertThat(
            instruments.named(id).strings().stream()
                .map(string -> string.pitch().toString())
                .collect(Collectors.joining(" ")))
        .isEqualTo(open);
  }

  @Test
  void adjacentStringsAreAFifthApartAndAFourthOnTheBass() {
    for (Instrument instrument : instruments.all()) {
      int apart = instrument.kind() == HandKind.BASS ? 5 : 7;
      for (int n = 1; n < 4; n++) {
        assertThat(instrument.string(n).pitch().midi() - instrument.string(n + 1).pitch().midi())
            .as(instrument.name())
            .isEqualTo(apart);
      }
    }
  }

  // common practice, no source: a bass part sounds an octave below what is written
  @Test
  void onlyTheDoubleBassSoundsAnOctaveLower() {
    assertThat(instruments.all())
        .extracting(Instrument::writtenOctaves)
        .containsExactly(0, 0, 0, -1);
  }

  @Test
  void stringsAreLongerFromViolinToBass() {
    assertThat(instruments.all().stream().map(Instrument::stringLength).toList()).isSorted();
  }

  @Test
  void aStringHasANumeralAndALetter() {
    OpenString lowest = instruments.named("viola").string(4);
    assertThat(lowest.roman()).isEqualTo("IV");
    assertThat(lowest.letterName()).isEqualTo("C");
    assertThat(new OpenString(1, Pitch.parse("Bb2")).letterName()).isEqualTo("B♭");
  }

  @Test
  void theLowestNoteIsTheLowestOpenString() {
    assertThat(instruments.named("viola").lowest()).hasToString("C3");
  }

  // names in English, Italian, German and French; common practice, no source
  @ParameterizedTest
  @CsvSource({
    "Violin, violin",
    "Violin I, violin",
    "Violins 2, violin",
    "Violini I, violin",
    "Violine II, violin",
    "1. Geige, violin",
    "Violon, violin",
    "Vln. 1, violin",
    "Viola, viola",
    "Bratsche, viola",
    "Bratschen, viola",
    "Viole, viola",
    "Altos, viola",
    "Vla., viola",
    "Violoncello, cello",
    "Violoncelli, cello",
    "Violoncell, cello",
    "Violoncelle, cello",
    "Cello, cello",
    "Vc., cello",
    "Double Bass, bass",
    "Double Basses, bass",
    "Contrabass, bass",
    "Contrabbasso, bass",
    "Kontrabass, bass",
    "Kontrabaß, bass",
    "Kontrabässe, bass",
    "Contrebasses, bass",
    "Cb., bass"
  })
  void thePartNameGivesTheInstrumentInFourLanguages(String name, String id) {
    assertThat(instruments.byPartName(name)).map(Instrument::id).contains(id);
  }

  // common practice, no source
  @ParameterizedTest
  @CsvSource({
    "Violine oder Bratsche, violin, violin viola",
    "Bratsche oder Violine, viola, viola violin",
    "Violino I e Viola, violin, violin viola",
    "Violoncello e Contrabbasso, cello, cello bass",
    "Contrabbasso e Violoncello, cello, bass cello",
    "Violoncello e basso, cello, cello bass",
    "Cello & Double Bass, cello, cello bass",
    "Vc. e Cb., cello, cello bass",
    "Vlc./Kb., cello, cello bass",
    "Violoncelli e Bassi, cello, cello bass",
    "Double Bass, bass, bass",
    "Violoncello, cello, cello",
    "Violin I (bass clef), violin, violin"
  })
  void theFirstOfSeveralInstrumentsCountsButTheCelloBeforeTheBass(
      String name, String id, String all) {
    assertThat(instruments.byPartName(name)).map(Instrument::id).contains(id);
    assertThat(instruments.allInPartName(name).stream().map(Instrument::id))
        .containsExactly(all.split(" "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Flute", "Flauto I", "Große Flöte", "Bass Clarinet", "2 Corni in F", "Klavier"})
  void namesOfOtherInstrumentsAreRecognised(String name) {
    assertThat(instruments.byPartName(name)).isEmpty();
    assertThat(instruments.namesOtherInstrument(name)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Part 1", "Violin", "Solo", "Violation"})
  void otherNamesMentionNoOtherInstrument(String name) {
    assertThat(instruments.namesOtherInstrument(name)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Flute", "Oboe", "", "Klavier", "Violation", "Timpani"})
  void aPartForAnotherInstrumentHasNoBowedInstrument(String name) {
    assertThat(instruments.byPartName(name)).isEmpty();
  }

  // common practice, no source
  @ParameterizedTest
  @CsvSource({
    "Altviool, viola",
    "Skrzypce I, violin",
    "Altówka, viola",
    "Wiolonczela, cello",
    "Hegedű, violin",
    "Brácsa, viola",
    "Violonchelo, cello",
    "Contrabajo, bass",
    "Contrabaixo, bass",
    "Alttoviulu, viola",
    "Скрипка 1, violin",
    "Виолончель, cello",
    "Контрабас, bass",
    "Violone, bass",
    "Upright Bass, bass"
  })
  void thePartNameGivesTheInstrumentInOtherLanguages(String name, String id) {
    assertThat(instruments.byPartName(name)).map(Instrument::id).contains(id);
    assertThat(instruments.isSharedName(name)).isFalse();
  }

  // common practice, no source
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Bass Guitar",
        "Bassgitarre",
        "E-Bass",
        "Electric Bass",
        "Bass Clarinet",
        "Contrabass Clarinet",
        "Bass Drum",
        "Bass Trombone",
        "Bass Voice",
        "Bass Viol",
        "Tenor Sax",
        "Tenor",
        "Viola da gamba",
        "Viola d'amore",
        "Alto Flute"
      })
  void namesThatOnlyBeginLikeAStringAreForOtherInstruments(String name) {
    assertThat(instruments.byPartName(name)).isEmpty();
    assertThat(instruments.namesOtherInstrument(name)).isTrue();
  }

  @Test
  void someNamesAreSharedWithVoicesAndOtherInstruments() {
    assertThat(List.of("Bass", "Basso", "Basses", "Bässe", "Alto", "Bass I", "Acoustic Bass", "B."))
        .allMatch(instruments::isSharedName);
    assertThat(List.of("String Bass", "Double Bass", "Violoncelli e Bassi", "Cb.", "Tenor", ""))
        .noneMatch(instruments::isSharedName);
    assertThat(instruments.isInitial("B.")).isTrue();
    assertThat(instruments.isInitial("Bass")).isFalse();
    assertThat(instruments.namesKeyboard("Klavier")).isTrue();
    assertThat(instruments.namesKeyboard("Flute")).isFalse();
  }

  // General MIDI level 1, from memory
  @Test
  void aMidiProgramGivesTheInstrumentOrExcludesIt() {
    assertThat(List.of(41, 42, 43, 44))
        .extracting(program -> instruments.byProgram(program).orElseThrow().id())
        .containsExactly("violin", "viola", "cello", "bass");
    assertThat(List.of(34, 40, 53, 59, 128)).allMatch(instruments::isOtherProgram);
    assertThat(List.of(1, 33, 44, 46, 49, 129)).noneMatch(instruments::isOtherProgram);
  }

  // MusicXML 4.0 standard sounds, from memory
  @ParameterizedTest
  @CsvSource({
    "strings.violin, violin",
    "strings.viola, viola",
    "strings.cello, cello",
    "strings.contrabass, bass"
  })
  void aStandardSoundGivesTheInstrument(String sound, String id) {
    assertThat(instruments.bySound(sound)).map(Instrument::id).contains(id);
  }

  @Test
  void theSoundOfAFluteGivesNoInstrument() {
    assertThat(instruments.bySound("wind.flutes.flute")).isEmpty();
    assertThat(instruments.isOtherSound("wind.flutes.flute")).isTrue();
    assertThat(instruments.isOtherSound("voice")).isTrue();
    assertThat(instruments.isOtherSound("keyboard.organ")).isTrue();
    assertThat(instruments.isOtherSound("keyboard.piano")).isFalse();
    assertThat(instruments.isOtherSound("strings.violin")).isFalse();
    assertThat(instruments.isOtherSound("strings.viola-damore")).isFalse();
  }

  // common practice, no source: treble clef on line 2, alto clef on line 3, bass clef on line 4
  @ParameterizedTest
  @CsvSource({"G2, violin", "C3, viola", "F4, cello"})
  void theFirstClefSuggestsAnInstrument(String clef, String id) {
    assertThat(instruments.byClef(clef)).map(Instrument::id).contains(id);
  }

  @Test
  void thePercussionClefSuggestsNoInstrument() {
    assertThat(instruments.byClef("percussion2")).isEmpty();
  }

  @Test
  void anUnknownInstrumentIsRefusedWithTheChoices() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> instruments.named("ukulele"))
        .withMessageContaining("'ukulele'")
        .withMessageContaining("violin, viola, cello, bass");
  }

  @Test
  void aStringThatDoesNotExistIsRefused() {
    Instrument violin = instruments.named("violin");
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> violin.string(5))
        .withMessage("Violin has no string 5");
    assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> violin.string(0));
  }

  private static Instrument built(
      ImmutableList<OpenString> strings, double string, double fingerboard, double reach) {
    return new Instrument(
        "x", "Viola", HandKind.VIOLIN, "standard", "16", strings, string, fingerboard, reach, 0);
  }

  private static ImmutableList<OpenString> strings(int many) {
    return IntStream.rangeClosed(1, many)
        .mapToObj(number -> new OpenString(Math.min(8, number), Pitch.parse("A4")))
        .collect(ImmutableList.toImmutableList());
  }

  @Test
  void anInstrumentWithoutItsSecondStringIsRefused() {
    ImmutableList<OpenString> gap =
        ImmutableList.of(
            new OpenString(1, Pitch.parse("A4")), new OpenString(3, Pitch.parse("G3")));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> built(gap, 375, 308, 105))
        .withMessageContaining("string 2");
  }

  @Test
  void anInstrumentHasOneToEightStrings() {
    assertThat(built(strings(1), 375, 308, 105).strings()).hasSize(1);
    assertThat(built(strings(8), 375, 308, 105).strings()).hasSize(8);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> built(strings(0), 375, 308, 105))
        .withMessage("Viola has 0 strings, not 1 to 8");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> built(strings(9), 375, 308, 105))
        .withMessage("Viola has 9 strings, not 1 to 8");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 105, string length 0.0 mm",
    "NaN, 308, 105, string length NaN mm",
    "375, 0, 105, a fingerboard of 0.0 mm",
    "375, 375, 105, a fingerboard of 375.0 mm",
    "375, 308, 0, a reach of 0.0 mm"
  })
  void impossibleLengthsAreRefused(
      double string, double fingerboard, double reach, String problem) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> built(strings(4), string, fingerboard, reach))
        .withMessageContaining(problem);
  }
}
