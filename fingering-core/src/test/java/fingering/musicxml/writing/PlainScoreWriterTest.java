package fingering.musicxml.writing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.collect.ImmutableList;
import fingering.music.BeatUnit;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.musicxml.UnwritableScoreException;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.marking.NoteMarks;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.Pitch;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Names and order of elements: MusicXML 4.0, W3C Music Notation Community Group. */
class PlainScoreWriterTest {

  @TempDir Path folder;

  /** Notes such as {@code D4 quarter}, chords as {@code D4+F4}, a rest as {@code r}. */
  private static PlainNote note(String text) {
    String[] words = text.strip().split(" ", -1);
    return PlainNote.of(
        words[0].equals("r")
            ? ImmutableList.of()
            : Stream.of(words[0].split("\\+", -1))
                .map(Pitch::parse)
                .collect(ImmutableList.toImmutableList()),
        BeatUnit.parse(words[1]));
  }

  private static PlainScore.Measure measure(Optional<PlainClef> clef, String notes) {
    return new PlainScore.Measure(
        clef,
        Stream.of(notes.split(",", -1))
            .map(PlainScoreWriterTest::note)
            .collect(ImmutableList.toImmutableList()));
  }

  private static PlainScore score(int fifths, int beats, int beatType, String... measures) {
    ImmutableList.Builder<PlainScore.Measure> all = ImmutableList.builder();
    for (int i = 0; i < measures.length; i++) {
      all.add(measure(i == 0 ? Optional.of(PlainClef.TREBLE) : Optional.empty(), measures[i]));
    }
    return new PlainScore(
        "Ladder", "Violin", 0, Optional.empty(), fifths, beats, beatType, all.build());
  }

  private static Element parsed(PlainScore score) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(PlainScoreWriter.text(score))))
          .getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<Element> all(Element parent, String name) {
    NodeList nodes = parent.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** The text of a child of each note, a dash if it has none. */
  private static String atNotes(PlainScore score, String name) {
    return all(parsed(score), "note").stream()
        .map(note -> all(note, name).stream().findFirst().map(Element::getTextContent).orElse("-"))
        .collect(Collectors.joining(" "));
  }

  private static Passage read(PlainScore score) {
    return ScoreReader.read(ScoreFile.of(PlainScoreWriter.text(score), ImmutableList.of()))
        .passage(PassageRequest.WHOLE);
  }

  // Accidentals apply to the end of the measure, in their octave only; common practice, no source.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0  | F#4 quarter,F#4 quarter,F#5 quarter,F4 quarter  | sharp - sharp natural
          1  | F#4 quarter,F4 quarter,F4 quarter,F#4 quarter   | - natural - sharp
          5  | F##4 quarter,F#4 quarter,B3 quarter,A##3 quarter | double-sharp sharp - double-sharp
          -4 | Bbb4 quarter,Bb4 quarter,Ab4 quarter,A4 quarter | flat-flat flat - natural
          -7 | Fb4 quarter,Cb5 quarter,F4 quarter,Bb4 quarter  | - - natural -
          """)
  void accidentalIsPrintedIfTheMeasureDoesNotShowIt(int fifths, String notes, String printed) {
    assertThat(atNotes(score(fifths, 4, 4, notes), "accidental")).isEqualTo(printed);
  }

  @Test
  void accidentalEndsWithItsMeasure() {
    assertThat(atNotes(score(0, 2, 4, "F#4 half", "F#4 half", "F4 half"), "accidental"))
        .isEqualTo("sharp sharp -");
  }

  // common practice, no source
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          4 | 4 | D4 quarter,E4 eighth,F4 eighth,G4 eighth,A4 eighth,B4 eighth,C5 eighth | - begin end begin continue continue end
          3 | 4 | D4 eighth,E4 eighth,F4 eighth,G4 eighth,A4 quarter                     | begin end begin end -
          6 | 8 | D4 eighth,E4 eighth,F4 eighth,G4 eighth,A4 eighth,B4 eighth            | begin continue end begin continue end
          4 | 4 | D4 eighth,r eighth,F4 eighth,G4 eighth,A4 dotted-quarter,B4 eighth     | - - begin end - -
          """)
  void eighthsAreBeamedInTheGroupsOfTheMeter(int beats, int beatType, String notes, String beams) {
    assertThat(atNotes(score(0, beats, beatType, notes), "beam")).isEqualTo(beams);
  }

  @Test
  void noteValuesAreWrittenInDivisionsThatFitThemAll() {
    PlainScore score = score(0, 4, 4, "C4 dotted-half,D4 eighth,E4 sixteenth,F4 16th");

    assertThat(all(parsed(score), "divisions").get(0).getTextContent()).isEqualTo("4");
    assertThat(atNotes(score, "duration")).isEqualTo("12 2 1 1");
    assertThat(atNotes(score, "type")).isEqualTo("half eighth 16th 16th");
    assertThat(all(parsed(score), "dot")).hasSize(1);
  }

  @Test
  void writtenScoresAreReadAgain() {
    ImmutableList<PlainNote> slurred =
        ImmutableList.of(
            new PlainNote(
                ImmutableList.of(Pitch.parse("Eb4")), BeatUnit.parse("quarter"), false, true),
            note("F4 eighth"),
            new PlainNote(
                ImmutableList.of(Pitch.parse("Gb4")), BeatUnit.parse("eighth"), true, false));
    PlainScore score =
        new PlainScore(
            "Mill & <Ladder>",
            "Viola",
            0,
            Optional.of(Tempo.parse("dotted-quarter=50.5")),
            -5,
            3,
            4,
            ImmutableList.of(
                measure(Optional.of(PlainClef.ALTO), "Db3+Ab3 half,r quarter"),
                new PlainScore.Measure(Optional.of(PlainClef.TREBLE), slurred)));

    Passage passage = read(score);

    assertThat(passage.title()).isEqualTo("Mill & <Ladder>");
    assertThat(passage.instrument().id()).isEqualTo("viola");
    assertThat(passage.tempo()).isEqualTo(Tempo.parse("dotted-quarter=50.5"));
    assertThat(passage.measures()).extracting(each -> each.fifths()).containsOnly(-5);
    assertThat(passage.measures()).extracting(each -> each.beats()).containsOnly(3);
    assertThat(passage.notes())
        .extracting(note -> note.written() + " " + note.start() + " " + note.length())
        .containsExactly("Db3 0 2", "Ab3 0 2", "Eb4 3 1", "F4 4 1 / 2", "Gb4 9 / 2 1 / 2");
    assertThat(passage.moments())
        .extracting(Moment::slurred)
        .containsExactly(false, false, true, true);
    assertThat(passage.remarks()).isEmpty();
  }

  // A double bass transposes by an octave: MusicXML 4.0, element octave-change.
  @Test
  void partThatSoundsAnOctaveLowerHasATransposition() {
    PlainScore score =
        new PlainScore(
            "",
            "Double bass",
            -1,
            Optional.empty(),
            0,
            4,
            4,
            ImmutableList.of(measure(Optional.of(PlainClef.BASS), "E2 whole")));

    Note note = read(score).notes().get(0);

    assertThat(all(parsed(score), "octave-change").get(0).getTextContent()).isEqualTo("-1");
    assertThat(note.written()).isEqualTo(Pitch.parse("E2"));
    assertThat(note.sounding()).isEqualTo(Pitch.parse("E1"));
    assertThat(read(score).remarks()).noneMatch(remark -> remark.contains("octave"));
  }

  @Test
  void newScoreIsMarkedAndWrittenLikeAnyOther() throws IOException {
    ScoreFile made =
        ScoreFile.of(PlainScoreWriter.text(score(0, 4, 4, "A4 half,B4 half")), ImmutableList.of());
    NoteMarks marks =
        new NoteMarks(
            new NoteAddress(0, 0, 1), Optional.of("1"), OptionalInt.of(2), Optional.of("1st pos."));
    Path plain = folder.resolve("ladder.musicxml");
    Path packed = folder.resolve("ladder.mxl");

    String marked = ScoreMarker.mark(made.text(), List.of(marks));
    made.writeMarked(marked, plain);
    made.writeMarked(marked, packed);

    assertThat(Files.readString(plain, StandardCharsets.UTF_8)).isEqualTo(marked);
    assertThat(ScoreFile.read(packed).text()).isEqualTo(marked);
    assertThat(ScoreReader.read(ScoreFile.read(plain)).passage(PassageRequest.WHOLE).notes())
        .extracting(note -> note.marks().finger())
        .containsExactly(Optional.empty(), Optional.of("1"));
    assertThatThrownBy(() -> made.writeMarked(marked, plain))
        .isInstanceOf(UnwritableScoreException.class)
        .hasMessageContaining("already exists and is not overwritten");
  }

  @Test
  void scoreThatCannotBeWrittenIsRefused() {
    ImmutableList<PlainScore.Measure> one = ImmutableList.of(measure(Optional.empty(), "A4 whole"));

    assertThatThrownBy(() -> score(0, 4, 4).measures()).hasMessage("a score needs a measure");
    assertThatThrownBy(() -> score(8, 4, 4, "A4 whole")).hasMessageContaining("seven sharps");
    assertThatThrownBy(() -> new PlainScore("\u0000", "Violin", 0, Optional.empty(), 0, 4, 4, one))
        .hasMessageContaining("printable text");
    assertThatThrownBy(() -> score(0, 0, 4, "A4 whole")).hasMessage("0/4 is not a meter");
    assertThatThrownBy(() -> score(0, 4, 3, "A4 whole")).hasMessage("4/3 is not a meter");
    assertThatThrownBy(() -> score(0, 4, 128, "A4 whole")).hasMessage("4/128 is not a meter");
    assertThatThrownBy(() -> new PlainScore("A", "Violin", 4, Optional.empty(), 0, 4, 4, one))
        .hasMessage("a part cannot transpose by 4 octaves");
    assertThatThrownBy(() -> new PlainNote(ImmutableList.of(), BeatUnit.QUARTER, false, true))
        .hasMessage("a slur cannot begin or end at a rest");
  }
}
