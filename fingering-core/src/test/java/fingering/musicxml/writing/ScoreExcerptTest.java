package fingering.musicxml.writing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A part or an excerpt as a score of its own, as a copyist makes it: common practice, no source.
 */
class ScoreExcerptTest {
  private static final String ATTRIBUTES =
      "<attributes><divisions>2</divisions><key><fifths>-3</fifths></key><time><beats>2</beats>"
          + "<beat-type>4</beat-type></time><clef><sign>C</sign><line>3</line></clef></attributes>";
  private static final String TEMPO =
      "<direction placement=\"above\" id=\"t\"><direction-type><words>Lento</words></direction-type>"
          + "<direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>50</per-minute>"
          + "</metronome></direction-type><staff>1</staff><sound tempo=\"50\"/></direction>";

  private static String note(String step, String notations) {
    return "<note><pitch><step>%s</step><octave>4</octave></pitch><duration>2</duration>%s<voice>1</voice>%s</note>"
        .formatted(
            step,
            notations.contains("tied type=\"stop\"")
                ? "<tie type=\"stop\"/>"
                : notations.contains("tied") ? "<tie type=\"start\"/>" : "",
            notations.isEmpty() ? "" : "<notations>" + notations + "</notations>");
  }

  private static String direction(String type) {
    return "<direction><direction-type>" + type + "</direction-type></direction>";
  }

  private static String part(String id, List<String> measures) {
    StringBuilder part = new StringBuilder("<part id=\"" + id + "\">");
    for (int i = 0; i < measures.size(); i++) {
      part.append("\n<measure number=\"").append(i + 1).append("\">");
      part.append(measures.get(i)).append("</measure>");
    }
    return part + "\n</part>";
  }

  private static String score(String head, String... parts) {
    StringBuilder list = new StringBuilder("<part-list><part-group number=\"1\" type=\"start\"/>");
    for (int i = 1; i <= parts.length; i++) {
      list.append("<score-part id=\"P%d\"><part-name>Viola</part-name></score-part>".formatted(i));
    }
    return "<score-partwise version=\"4.0\">"
        + "<work><work-title>Rain</work-title></work>"
        + head
        + list
        + "<part-group number=\"1\" type=\"stop\"/></part-list>"
        + String.join("", parts)
        + "</score-partwise>";
  }

  private static String alone(String... measures) {
    return score("", part("P1", List.of(measures)));
  }

  private static Passage read(String xml) {
    return ScoreReader.read(ScoreFile.of(xml, ImmutableList.of())).passage(PassageRequest.WHOLE);
  }

  private static String rest() {
    return note("D", "") + note("E", "");
  }

  @Test
  void aScoreOfOnePartStaysAsItIs() {
    String score = alone(ATTRIBUTES + rest(), "<print new-system=\"yes\"/>" + rest());
    assertThat(ScoreExcerpt.part(score, 0)).isEqualTo(score);
  }

  @Test
  void aPartHasTheHeadingsAndItsOwnNotesOnly() {
    String head =
        "<credit page=\"1\"><credit-words>Rain</credit-words></credit>"
            + "<credit page=\"2\"><credit-words>2</credit-words></credit>";
    String score =
        score(
            head,
            part("P1", List.of(ATTRIBUTES + note("A", "") + note("A", ""))),
            part("P2", List.of(ATTRIBUTES + "<print new-page=\"yes\"/>" + rest())));
    String part = ScoreExcerpt.part(score, 1);
    assertThat(part)
        .contains("<work-title>Rain</work-title>", "<credit-words>Rain", "id=\"P2\"")
        .doesNotContain("P1", "part-group", "<credit-words>2", "<print", "<step>A");
    assertThat(read(part).notes()).hasSize(2);
  }

  @Test
  void aPartGetsTheTemposAndRehearsalMarksPrintedOverTheTopPart() {
    String mark = direction("<rehearsal>B</rehearsal>");
    String top =
        part("P1", List.of(ATTRIBUTES + TEMPO + rest(), note("D", "") + mark + note("E", "")));
    String half = "<note><rest/><duration>4</duration><voice>1</voice></note>";
    String score = score("", top, part("P2", List.of(ATTRIBUTES + rest(), half)));
    String part = ScoreExcerpt.part(score, 1);
    assertThat(read(part).tempo().perMinute()).isEqualByComparingTo("50");
    assertThat(part)
        .containsOnlyOnce("<rehearsal>B</rehearsal>")
        .contains("<rehearsal>B</rehearsal></direction-type><offset>2</offset></direction>")
        .doesNotContain("id=\"t\"", "<staff>");
    String both = score("", top, part("P2", List.of(ATTRIBUTES + TEMPO + rest(), half)));
    assertThat(ScoreExcerpt.part(both, 1)).containsOnlyOnce("<metronome>");
  }

  @Test
  void theStavesOfAScoreBecomeAsLargeAsThoseOfParts() {
    String head =
        "<defaults><scaling><millimeters>3.5</millimeters><tenths>40</tenths></scaling><page-layout>"
            + "<page-height>2000</page-height><page-width>1500</page-width></page-layout></defaults>"
            + "<credit><credit-words default-x=\"100\" default-y=\"1900\">Rain</credit-words></credit>";
    String part = part("P2", List.of(ATTRIBUTES + rest()));
    String score = score(head, part.replace("P2", "P1"), part);
    assertThat(ScoreExcerpt.part(score, 1))
        .contains(
            "<millimeters>7</millimeters>",
            "<page-height>1000</page-height>",
            "<page-width>750</page-width>",
            "default-x=\"50\" default-y=\"950\"");
  }

  @Test
  void anExcerptBeginsWithWhatIsInForce() {
    String tuba = "<transpose><chromatic>-2</chromatic></transpose>";
    String score =
        alone(
            ATTRIBUTES.replace("</attributes>", tuba + "</attributes>")
                + TEMPO
                + direction("<dynamics><mf/></dynamics>")
                + direction("<words>pizz.</words>")
                + rest(),
            "<attributes><key><fifths>1</fifths></key></attributes>" + rest(),
            "<attributes><clef><sign>G</sign><line>2</line></clef></attributes>" + rest(),
            rest());
    String excerpt = ScoreExcerpt.measures(score, 0, 2, 2);
    assertThat(excerpt)
        .contains(
            "<measure number=\"3\"><attributes><divisions>2</divisions><key><fifths>1</fifths></key>"
                + "<time><beats>2</beats><beat-type>4</beat-type></time>"
                + tuba
                + "</attributes><attributes><clef><sign>G</sign><line>2</line></clef></attributes>",
            "<mf/>",
            "pizz.",
            "m. 3")
        .doesNotContain("<line>3</line>", "number=\"2\"", "number=\"4\"", "<fifths>-3");
    assertThat(read(excerpt).tempo().perMinute()).isEqualByComparingTo("50");
  }

  @Test
  void anExcerptThatNamesTempoAndDynamicItselfGetsNoOthers() {
    String loud = direction("<dynamics><f/></dynamics>");
    String score =
        alone(
            ATTRIBUTES + TEMPO + direction("<dynamics><p/></dynamics>") + rest(),
            TEMPO.replace("50", "90") + loud + rest());
    assertThat(ScoreExcerpt.measures(score, 0, 1, 1))
        .containsOnlyOnce("<metronome>")
        .contains("90")
        .doesNotContain("50", "<p/>");
  }

  @Test
  void anExcerptThatBeginsWithARestGetsNoDynamicBesideThatOfItsFirstNote() {
    String score =
        alone(
            ATTRIBUTES + direction("<dynamics><p/></dynamics>") + note("D", ""),
            "<note><rest/><duration>2</duration></note>"
                + direction("<dynamics><f/></dynamics>")
                + note("E", ""));
    assertThat(ScoreExcerpt.measures(score, 0, 1, 1)).contains("<f/>").doesNotContain("<p/>");
  }

  @Test
  void afterAHairpinTheDynamicIsNotCertain() {
    String hairpin = direction("<wedge type=\"crescendo\"/>") + note("D", "");
    String score =
        alone(
            ATTRIBUTES + direction("<dynamics><p/></dynamics>") + rest(),
            hairpin + direction("<wedge type=\"stop\"/>") + note("E", ""),
            rest());
    assertThat(ScoreExcerpt.measures(score, 0, 2, 2)).doesNotContain("<p/>", "wedge");
  }

  // o begins a slur, c ends one; the excerpt is measures 2 and 3 of 4, with two notes each
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "inside,                      .. oc .. .., oc ..",
    "into the first note,         .o c. .. .., .. ..",
    "into a later note,           .o .. c. .., o. c.",
    "out of the last note,        .. .. .o c., .. ..",
    "out of an earlier note,      .. o. .. c., o. .c",
    "over the whole excerpt,      .o .. .. c., o. .c",
    "elsewhere,                   oc .. .. oc, .. ..",
    "that never ends,             .. .. o. .., .. o.",
  })
  void slursKeepTheNotesThatAreLeft(String where, String slurs, String expected) {
    StringBuilder seen = new StringBuilder();
    String score = alone(slurred(slurs).toArray(String[]::new));
    String excerpt = ScoreExcerpt.measures(score, 0, 1, 2);
    for (String measure : excerpt.split("<measure", -1)) {
      if (measure.contains("<note>")) {
        seen.append(' ');
        for (String note : measure.split("<note>", -1)) {
          if (note.contains("<pitch>")) {
            boolean starts = note.contains("type=\"start\"");
            seen.append(starts ? 'o' : note.contains("type=\"stop\"") ? 'c' : '.');
          }
        }
      }
    }
    assertThat(seen.toString().strip()).isEqualTo(expected);
    assertThat(read(excerpt).notes()).hasSize(4);
  }

  private static List<String> slurred(String slurs) {
    List<String> measures = new ArrayList<>();
    for (String measure : slurs.split(" ", -1)) {
      StringBuilder notes = new StringBuilder(measures.isEmpty() ? ATTRIBUTES : "");
      for (int i = 0; i < measure.length(); i++) {
        notes.append(
            note(
                "D",
                switch (measure.charAt(i)) {
                  case 'o' -> "<slur number=\"1\" type=\"start\"/>";
                  case 'c' -> "<slur number=\"1\" type=\"stop\"/>";
                  default -> "";
                }));
      }
      measures.add(notes.toString());
    }
    return measures;
  }

  @Test
  void tiesIntoAndOutOfTheExcerptGo() {
    String start = "<tied type=\"start\"/>";
    String stop = "<tied type=\"stop\"/>";
    String score =
        alone(
            ATTRIBUTES + note("C", "") + note("D", start),
            note("D", stop) + note("E", start),
            note("E", stop) + note("F", start),
            note("F", stop) + note("G", ""));
    String excerpt = ScoreExcerpt.measures(score, 0, 1, 2);
    assertThat(excerpt.split("tied type=\"start\"", -1)).hasSize(2);
    assertThat(excerpt.split("tied type=\"stop\"", -1)).hasSize(2);
    assertThat(excerpt.split("<tie ", -1)).hasSize(3);
  }

  @Test
  void hairpinsAndOctaveLinesAreClosed() {
    String begin =
        "<direction placement=\"above\"><direction-type><octave-shift type=\"down\" size=\"8\"/>"
            + "</direction-type></direction>";
    String score =
        alone(
            ATTRIBUTES + begin + rest(),
            note("D", "") + direction("<octave-shift type=\"stop\" size=\"8\"/>") + note("E", ""),
            direction("<wedge type=\"diminuendo\" number=\"1\"/>")
                + rest()
                + "<barline location=\"right\"><bar-style>light-light</bar-style></barline>",
            rest() + direction("<wedge type=\"stop\" number=\"1\"/>"));
    assertThat(ScoreExcerpt.measures(score, 0, 1, 2))
        .containsOnlyOnce("<octave-shift type=\"down\" size=\"8\"/>")
        .containsOnlyOnce("<octave-shift type=\"stop\" size=\"8\"/>")
        .containsOnlyOnce("<wedge type=\"diminuendo\" number=\"1\"/>")
        .contains(
            "<direction><direction-type><wedge type=\"stop\" number=\"1\"/></direction-type>"
                + "</direction><barline location=\"right\">");
    assertThat(ScoreExcerpt.measures(score, 0, 3, 3)).contains("diminuendo");
    String closed =
        alone(
            ATTRIBUTES + direction("<wedge type=\"crescendo\"/>") + rest(),
            direction("<wedge type=\"stop\"/>") + rest());
    assertThat(ScoreExcerpt.measures(closed, 0, 1, 1)).doesNotContain("wedge");
  }

  @Test
  void repeatsAndEndingsWithoutTheirOtherHalfGo() {
    String forward =
        "<barline location=\"left\"><bar-style>heavy-light</bar-style><repeat direction=\"forward\"/></barline>";
    String back =
        "<barline location=\"right\"><bar-style>light-heavy</bar-style><ending number=\"1\" type=\"stop\"/>"
            + "<repeat direction=\"backward\"/></barline>";
    String first =
        "<barline location=\"left\"><ending number=\"1\" type=\"start\">1.</ending></barline>";
    String score =
        alone(ATTRIBUTES + rest(), forward + rest(), first + rest() + back, rest(), rest());
    assertThat(ScoreExcerpt.measures(score, 0, 1, 2)).contains(forward, first, back);
    assertThat(ScoreExcerpt.measures(score, 0, 0, 1)).doesNotContain("<barline");
    assertThat(ScoreExcerpt.measures(score, 0, 2, 3))
        .doesNotContain("<repeat", "light-heavy")
        .contains("type=\"start\"", "type=\"stop\"");
  }

  @Test
  void aPlaceThatDoesNotExistIsAMistakeInAProgram() {
    String score = alone(ATTRIBUTES + rest());
    assertThatIllegalArgumentException().isThrownBy(() -> ScoreExcerpt.part(score, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> ScoreExcerpt.measures(score, 0, 1, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> ScoreExcerpt.measures(score, 0, 1, 0));
  }
}
