package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.partWithProgram;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.score;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import fingering.music.Passage;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.playability.CheckLevel;
import fingering.playability.ScoreCheck;
import fingering.playability.check.Checker;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which parts are for bowed strings: by sound, name in full, MIDI program, neighbours. Names and
 * neighbours are common practice, no source.
 */
class PartRecognitionTest {
  private static final String BASS_CLEF =
      START.replace("<sign>G</sign><line>2</line>", "<sign>F</sign><line>4</line>");
  private static final String ALTO_CLEF =
      START.replace("<sign>G</sign><line>2</line>", "<sign>C</sign><line>3</line>");
  private static final String LOW = measure("1", BASS_CLEF, note("D3", 16));

  /** A score of parts in bass clef with these names, separated by commas. */
  private static Score named(String names) {
    return read(
        score(
            Splitter.on(',')
                .trimResults()
                .splitToStream(names)
                .map(name -> part(name, "", LOW))
                .toArray(ScoreText.Part[]::new)));
  }

  private static String instrument(PartInfo part) {
    return part.isString() ? part.instrument().map(Instrument::id).orElse("") : "none";
  }

  private static String last(Score score) {
    return instrument(score.parts().get(score.parts().size() - 1));
  }

  private static String alone(ScoreText.Part part) {
    return last(read(score(part)));
  }

  // MusicXML 4.0 standard sounds, from memory
  @ParameterizedTest
  @CsvSource({
    "Bass, voice.bass, none",
    "Basses, voice.vocals, none",
    "Bass, voice, none",
    "Bass, pluck.bass, none",
    "Bass, pluck.bass.electric, none",
    "Bass, brass.tuba.bass, none",
    "Basso, wind.reed.bassoon, none",
    "Contrabass, wind.reed.clarinet.contrabass, none",
    "Viola, pluck.guitar, none",
    "Bass, strings.viol.bass, none",
    "Violone, strings.viol.violone, bass",
    "Bass, strings.contrabass, bass",
    "Tenor, voice.tenor, none",
    "Low part, strings.cello, cello",
    "Violoncello, strings.group, cello",
    "Violoncello, keyboard.piano, cello",
    "Bass, keyboard.piano, bass"
  })
  void theSoundDecidesUnlessProgramsGiveItToAnyPart(String name, String sound, String id) {
    assertThat(alone(part(name, sound, LOW))).isEqualTo(id);
  }

  // General MIDI level 1, from memory: 33 acoustic bass, 34 to 40 bass guitars and synthesizers, 41
  // to 44 violin to contrabass, 46 pizzicato, 49 strings, 53 to 55 choir, 59 tuba, 1 piano
  @ParameterizedTest
  @CsvSource({
    "Bass, 34, none",
    "Bass, 40, none",
    "Bass, 53, none",
    "Basso, 55, none",
    "Basses, 59, none",
    "Bass, 44, bass",
    "Bass, 33, bass",
    "Bass, 1, bass",
    "Bass, 46, bass",
    "Bass, 49, bass",
    "Line 3, 43, cello",
    "Line 3, 41, violin",
    "Line 3, 42, viola",
    "Line 3, 1, none",
    "Double Bass, 34, bass",
    "Bass Guitar, 44, none"
  })
  void theMidiProgramDecidesIfTheNameDoesNot(String name, int program, String id) {
    assertThat(alone(partWithProgram(name, program, LOW))).isEqualTo(id);
  }

  @Test
  void theChannelOfDrumsSaysNothing() {
    ScoreText.Part drums = partWithProgram("Line 3", 41, LOW);
    assertThat(
            alone(
                new ScoreText.Part(
                    drums.name(),
                    drums.instrument().replace("<midi-channel>1<", "<midi-channel>10<"),
                    drums.measures())))
        .isEqualTo("none");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ':',
      value = {
        "Violin, Viola, Cello, Bass : bass",
        "Violini, Viole, Violoncelli, Bassi : bass",
        "Geigen, Bratschen, Celli, Bässe : bass",
        "Violons, Altos, Violoncelles, Basses : bass",
        "Violin, B. : bass",
        "Piano, Violin, Cello, Acoustic Bass : bass",
        "Flute, Violin, Viola, Cello, Bass : bass",
        "Soprano, Alto, Tenor, Violin, Cello, Bass : bass",
        "Violin, Cello, Soprano, Alto, Tenor, Bass : none",
        "Soprano, Alto, Tenor, Bass : none",
        "Sopran, Alt, Tenor, Bass : none",
        "Soprano, Contralto, Ténor, Basse : none",
        "S., A., T., B. : none",
        "Guitar, Bass : none",
        "Drums, Bass : none",
        "Piano, Bass : none",
        "Klavier, Bass : none",
        "Euphonium, Tubas, Basses : none",
        "Violin, Cello, Double Bass, Bass : none",
        "Bass : bass",
        "Low part, Bass : bass",
        "B. : none"
      })
  void aBareBassIsWhatItsNeighboursSay(String names, String id) {
    assertThat(last(named(names))).isEqualTo(id);
  }

  @Test
  void altoIsAViolaBesideViolinsAndASingerBesideATenor() {
    String alto = measure("1", ALTO_CLEF, note("D4", 16));
    ScoreText.Part part = part("Alto", "", alto);
    assertThat(last(read(score(part("Violon", "", LOW), part("Violoncelle", "", LOW), part))))
        .isEqualTo("viola");
    assertThat(last(read(score(part("Soprano", "", LOW), part("Ténor", "", LOW), part))))
        .isEqualTo("none");
    assertThat(last(named("Violon, Violoncelle, Alto"))).isEqualTo("viola");
    assertThat(alone(part("Alto", "", measure("1", START, note("D4", 16))))).isEqualTo("none");
  }

  @Test
  void lyricsOrATrebleClefMakeABareBassSomethingElse() {
    String sung = "<lyric><text>la</text></lyric>";
    String notes = measure("1", BASS_CLEF, note("D3", 16).print(sung));
    assertThat(last(read(score(part("Violin", "", LOW), part("Bass", "", notes)))))
        .isEqualTo("none");
    String treble = measure("1", START, note("D4", 16));
    assertThat(last(read(score(part("Violin", "", LOW), part("Bass", "", treble)))))
        .isEqualTo("none");
  }

  @Test
  void anInstrumentNameInFullBeatsABareName() {
    String full =
        "<score-instrument id=\"I1\"><instrument-name>%s</instrument-name></score-instrument>";
    assertThat(alone(new ScoreText.Part("Bass", full.formatted("Contrabass"), LOW)))
        .isEqualTo("bass");
    assertThat(alone(new ScoreText.Part("Bass", full.formatted("Electric Bass"), LOW)))
        .isEqualTo("none");
    assertThat(alone(new ScoreText.Part("Bass", full.formatted("Piano"), LOW))).isEqualTo("bass");
    assertThat(alone(new ScoreText.Part("Brass", full.formatted("Br."), LOW))).isEqualTo("none");
  }

  private static List<String> remarks(Score score, PassageRequest request) {
    Passage passage = score.passage(request);
    return passage.remarks();
  }

  @Test
  void aGuessSaysThatItIsOneUnlessTheInstrumentIsGiven() {
    Score strings = named("Violin, Viola, Cello, Bass");
    PassageRequest bass = PassageRequest.WHOLE.withPart("Bass");
    assertThat(remarks(strings, bass))
        .contains(
            "the part 'Bass' is taken for a double bass because its neighbours are 'Cello' and 'Viola'; choose another instrument if that is wrong");
    assertThat(remarks(strings, bass.withInstrument(Instruments.standard().named("double bass"))))
        .noneMatch(remark -> remark.contains("is taken for"));
    assertThat(remarks(named("Bass"), PassageRequest.WHOLE))
        .contains(
            "the part 'Bass' is taken for a double bass because no other part shows another instrument; choose another instrument if that is wrong");
    assertThat(remarks(named("Cello, Double Bass"), PassageRequest.WHOLE.withPart("2")))
        .noneMatch(remark -> remark.contains("instrument"));
  }

  @Test
  void aRequestedSingerIsReadByItsClefWithTheReason() {
    assertThat(remarks(named("Tenor, Bass"), PassageRequest.WHOLE.withPart("Bass")))
        .contains(
            "'Bass' is not a part for a bowed string instrument (beside 'Tenor'); by its first clef it is read for the cello; choose another instrument if that is wrong");
    PassageRequest asBass =
        PassageRequest.WHOLE
            .withPart("Bass")
            .withInstrument(Instruments.standard().named("double bass"));
    assertThat(named("Tenor, Bass").passage(asBass).instrument().id()).isEqualTo("bass");
  }

  @Test
  void withoutAStringPartEachPartIsListedWithItsReason() {
    Score choir = read(score(part("Tenor", "", LOW), part("Bass", "voice.bass", LOW)));
    assertThat(Refusal.of(() -> choir.passage(PassageRequest.WHOLE)))
        .isEqualTo(
            "'Study' has 2 parts, none of them known to be for a string instrument; choose one, and its instrument: 1 Tenor (another instrument or a voice), 2 Bass (sound voice.bass).");
    ScoreCheck check = Checker.of(CheckLevel.preset("advanced")).check(choir);
    assertThat(check.parts()).isEmpty();
    assertThat(check.remarks()).anyMatch(remark -> remark.endsWith(", 2 Bass (sound voice.bass)"));
  }

  @Test
  void aPartThatRestsThroughoutIsAStringPartWithoutNotes() {
    Score score =
        read(score(part("Tenor", "", LOW), part("Violin", "", measure("1", BASS_CLEF, rest(16)))));
    assertThat(last(score)).isEqualTo("violin");
    assertThat(Refusal.of(() -> score.passage(PassageRequest.WHOLE)))
        .isEqualTo("Violin has no notes to finger: choose another part.");
    assertThat(Checker.of(CheckLevel.preset("advanced")).check(score).remarks())
        .contains("Violin has no notes to finger and was not checked")
        .noneMatch(remark -> remark.contains("no part was recognised"));
  }
}
