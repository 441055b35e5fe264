package fingering.musicxml.marking;

import static fingering.musicxml.marking.MarkerTexts.all;
import static fingering.musicxml.marking.MarkerTexts.at;
import static fingering.musicxml.marking.MarkerTexts.finger;
import static fingering.musicxml.marking.MarkerTexts.growth;
import static fingering.musicxml.marking.MarkerTexts.measure;
import static fingering.musicxml.marking.MarkerTexts.string;
import static fingering.musicxml.marking.MarkerTexts.words;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.stream.XMLStreamException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScoreMarkerTest {

  /** Two parts with other content around the notes, which an edit must not change. */
  private static final String SCORE =
      """
      <?xml version='1.0'  encoding="UTF-8" standalone='no'?>
      <!-- a clef \uD834\uDD1E, and <note> in a comment -->
      <!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
      <?tool  keep="me" ?>
      <score-partwise version="4.0">
        <work><work-title>Étude &amp; &#x201c;Caprice&#8221; \uD834\uDD22</work-title></work>
        <part-list>
          <score-part id="P1"><part-name><![CDATA[Violin <note> & \uD834\uDD1E]]></part-name></score-part>
          <score-part id='P2'><part-name>Cello</part-name></score-part>
        </part-list>
        <part id="P1">
          <measure number="1">
            <!-- first -->
            <note  default-x = '12.5' >
              <pitch><step>A</step><octave>4</octave></pitch>
              <duration>1</duration>
              <voice>1</voice>
            </note><!-- glued -->
            <note>
              <rest/>
              <duration>1</duration>
            </note>
          </measure>
          <measure number="X2">
            <note>
              <pitch><step>D</step><octave>5</octave></pitch>
              <duration>1</duration>
              <voice>1</voice>
              <staff>1</staff>
              <lyric><text>La\u00a0la</text></lyric>
            </note>
          </measure>
        </part>
        <part id='P2'>
          <measure number="1"/>
          <measure number="X2">
            <note>
              <pitch><step>C</step><octave>2</octave></pitch>
              <duration>4</duration>
            </note>
          </measure>
        </part>
      </score-partwise>
      <!-- the end -->
      """;

  private static final List<NoteMarks> MARKS =
      List.of(
          all(at(1, 1, 0), "2", 3, "½ pos."),
          all(at(0, 0, 0), "1", 2, "1st pos."),
          all(at(0, 1, 0), "T", 1, "sul A"));

  private static String tail(String note) {
    return "<note><pitch/><duration>1</duration>" + note + "</note>";
  }

  private static String oneNote(String ending, NoteMarks... marks) {
    String marked = ScoreMarker.mark(measure(tail(ending)), List.of(marks));
    String opening = measure("").replace("</measure></part></score-partwise>", "");
    String before = "<note><pitch/><duration>1</duration>";
    assertThat(marked).startsWith(opening + before);
    return marked.substring(
        opening.length() + before.length(),
        marked.length() - "</note></measure></part></score-partwise>".length());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyInsertionFollowsTheLayoutAndNothingElseChanges(String lineEnd) {
    String original = SCORE.replace("\n", lineEnd);

    String marked = ScoreMarker.mark(original, MARKS);

    String expected =
        SCORE
            .replace(
                "      <note  default-x",
                direction("1st pos.", "        <voice>1</voice>\n") + "      <note  default-x")
            .replace(
                "        <voice>1</voice>\n      </note><!-- glued -->",
                "        <voice>1</voice>\n"
                    + notations("<fingering>1</fingering>", 2)
                    + "      </note><!-- glued -->")
            .replace(
                "      <note>\n        <pitch><step>D",
                direction("sul A", "        <voice>1</voice>\n        <staff>1</staff>\n")
                    + "      <note>\n        <pitch><step>D")
            .replace("        <lyric>", notations("<thumb-position/>", 1) + "        <lyric>")
            .replace(
                "      <note>\n        <pitch><step>C",
                direction("½ pos.", "") + "      <note>\n        <pitch><step>C")
            .replace(
                "        <duration>4</duration>\n",
                "        <duration>4</duration>\n" + notations("<fingering>2</fingering>", 3));
    assertThat(marked).isEqualTo(expected.replace("\n", lineEnd));
  }

  private static String direction(String words, String rest) {
    return """
    <direction placement="above">
      <direction-type>
        <words default-y="30">%s</words>
      </direction-type>
    """
            .formatted(words)
            .indent(6)
        + rest
        + "      </direction>\n";
  }

  private static String notations(String finger, int string) {
    return """
    <notations>
      <technical>
        %s
        <string>%d</string>
      </technical>
    </notations>
    """
        .formatted(finger, string)
        .indent(8);
  }

  @Test
  void removingTheInsertionsGivesTheOriginal() {
    String marked = ScoreMarker.mark(SCORE, MARKS);

    String stripped =
        marked
            .replaceAll("(?s)<direction placement=\"above\">.*?</direction>\\s*", "")
            .replaceAll("(?s)\\s*<notations>.*?</notations>", "");

    assertThat(stripped).isEqualTo(SCORE);
  }

  @Test
  void elementAndAttributeCountsGrowByExactlyTheMarks() throws XMLStreamException {
    assertThat(growth(SCORE, ScoreMarker.mark(SCORE, MARKS)))
        .containsExactlyInAnyOrderEntriesOf(
            Map.ofEntries(
                Map.entry("direction", 3),
                Map.entry("direction@placement=above", 3),
                Map.entry("direction-type", 3),
                Map.entry("words", 3),
                Map.entry("words@default-y=30", 3),
                Map.entry("voice", 2),
                Map.entry("staff", 1),
                Map.entry("notations", 3),
                Map.entry("technical", 3),
                Map.entry("fingering", 2),
                Map.entry("thumb-position", 1),
                Map.entry("string", 3)));
  }

  @Test
  void noMarksChangeNothing() {
    NoteMarks nothing =
        new NoteMarks(at(0, 0, 0), Optional.empty(), OptionalInt.empty(), Optional.empty());

    assertThat(ScoreMarker.mark(SCORE, List.of())).isEqualTo(SCORE);
    assertThat(ScoreMarker.mark(SCORE, List.of(nothing))).isEqualTo(SCORE);
  }

  @Test
  void markingTwiceRepeatsOnlyTheWords() {
    List<NoteMarks> marks =
        List.of(
            finger(0, "3"),
            new NoteMarks(at(0, 1, 0), Optional.of("T"), OptionalInt.of(2), Optional.empty()));
    String once = ScoreMarker.mark(SCORE, marks);

    assertThat(ScoreMarker.mark(once, marks)).isEqualTo(once);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "                | <notations><technical><fingering>4</fingering><string>1</string></technical></notations>",
        "<staff>1</staff><beam>begin</beam> | <staff>1</staff><beam>begin</beam><notations><technical><fingering>4</fingering><string>1</string></technical></notations>",
        "<lyric/><play/> | <notations><technical><fingering>4</fingering><string>1</string></technical></notations><lyric/><play/>",
        "<play/>         | <notations><technical><fingering>4</fingering><string>1</string></technical></notations><play/>",
        "<listen/>       | <notations><technical><fingering>4</fingering><string>1</string></technical></notations><listen/>",
        "<notations/>    | <notations><technical><fingering>4</fingering><string>1</string></technical></notations>",
        "<notations id='n' /> | <notations id='n' ><technical><fingering>4</fingering><string>1</string></technical></notations>",
        "<notations></notations> | <notations><technical><fingering>4</fingering><string>1</string></technical></notations>",
        "<notations><slur/></notations><lyric/> | <notations><slur/><technical><fingering>4</fingering><string>1</string></technical></notations><lyric/>",
        "<notations><slur/></notations><notations><tied/></notations> | <notations><slur/><technical><fingering>4</fingering><string>1</string></technical></notations><notations><tied/></notations>",
        "<notations><slur/></notations><notations><technical/></notations> | <notations><slur/></notations><notations><technical><fingering>4</fingering><string>1</string></technical></notations>",
        "<notations><technical><up-bow/></technical><slur/></notations> | <notations><technical><up-bow/><fingering>4</fingering><string>1</string></technical><slur/></notations>",
        "<notations><technical></technical></notations> | <notations><technical><fingering>4</fingering><string>1</string></technical></notations>",
        "<notations print-object='no'><technical/></notations> | <notations print-object='no'><technical/></notations><notations><technical><fingering>4</fingering><string>1</string></technical></notations>",
        "<notations><technical><fingering substitution='yes'>4</fingering></technical></notations> | <notations><technical><fingering substitution='yes'>4</fingering><fingering>4</fingering><string>1</string></technical></notations>",
      })
  void fingerAndStringGoIntoTheTechnicalOfTheNote(String before, String after) {
    NoteMarks marks =
        new NoteMarks(at(0, 0, 0), Optional.of("4"), OptionalInt.of(1), Optional.empty());

    assertThat(oneNote(before == null ? "" : before, marks)).isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<fingering>2</fingering>         | 2 | <fingering>2</fingering>",
        "<fingering> 2 </fingering>       | 2 | <fingering> 2 </fingering>",
        "<fingering>&#50;</fingering>     | 2 | <fingering>&#50;</fingering>",
        "<fingering placement='below'> 2 </fingering> | 3 | <fingering placement='below'> 3 </fingering>",
        "<fingering><!--c--><![CDATA[2]]></fingering> | 3 | <fingering><!--c-->3</fingering>",
        "<fingering/>                     | 3 | <fingering>3</fingering>",
        "<fingering></fingering>          | 3 | <fingering>3</fingering>",
        "<fingering>2</fingering>         | T | <thumb-position/>",
        "<fingering>2</fingering>         | 0 | <fingering>0</fingering>",
        "<open-string/>                   | 0 | <open-string/>",
        "<open-string/>                   | 1 | <fingering>1</fingering>",
        "<thumb-position/>                | T | <thumb-position/>",
        "<thumb-position/>                | 0 | <fingering>0</fingering>",
        "<open-string/><up-bow/><fingering>0</fingering> | 1 | <up-bow/><fingering>1</fingering>",
        "<fingering alternate='yes'>2</fingering><fingering>1</fingering> | 2 | <fingering alternate='yes'>2</fingering><fingering>2</fingering>",
        "<fingering>1</fingering><fingering substitution='yes'>3</fingering> | 2 | <fingering>2</fingering><fingering substitution='yes'>3</fingering>",
      })
  void anExistingFingerIsKeptOrChangedInPlace(String before, String finger, String after) {
    String open = "<notations><technical>";
    String close = "</technical></notations>";

    assertThat(oneNote(open + before + close, finger(0, finger))).isEqualTo(open + after + close);
  }

  @Test
  void anExistingStringIsKeptOrChangedInPlace() {
    String before = "<notations><technical><string>3</string></technical></notations>";

    assertThat(oneNote(before, string(0, 3))).isEqualTo(before);
    assertThat(oneNote(before, string(0, 2))).isEqualTo(before.replace("3", "2"));
    assertThat(
            oneNote(
                before,
                new NoteMarks(at(0, 0, 0), Optional.of("1"), OptionalInt.of(4), Optional.empty())))
        .isEqualTo(
            before.replace("<string>3</string>", "<string>4</string><fingering>1</fingering>"));
  }

  @Test
  void theOpenStringIsFinger0AndTheThumbIsASign() {
    String open = "<notations><technical>";
    String close = "</technical></notations>";

    assertThat(oneNote("", finger(0, "0"))).isEqualTo(open + "<fingering>0</fingering>" + close);
    assertThat(oneNote("", finger(0, "T"))).isEqualTo(open + "<thumb-position/>" + close);
  }

  @Test
  void selfClosingElementsOpenUpInTheLayoutAroundThem() {
    String after =
        """

          <note>
            <pitch/>
            <notations>
              <technical>
                <fingering>1</fingering>
              </technical>
            </notations>
          </note>
        """;
    String before = after.replaceAll("<notations>(?s:.*)</notations>", "<notations/>");
    String technical = after.replaceAll("<technical>(?s:.*)</technical>", "<technical/>");
    String spaced =
        after.replaceAll("<technical>(?s:.*)</technical>", "<technical>\n      </technical>");

    for (String each : List.of(before, technical, spaced)) {
      assertThat(ScoreMarker.mark(measure(each), List.of(finger(0, "1"))))
          .isEqualTo(measure(after));
    }
  }

  @Test
  void tabsAndMissingIndentationAreKept() {
    String tabs = "\n\t<note>\n\t\t<pitch/>\n\t</note>\n";
    String flush = "\n<note>\n<pitch/>\n</note>\n";

    assertThat(ScoreMarker.mark(measure(tabs), List.of(string(0, 1))))
        .contains("\n\t\t<notations>\n\t\t\t<technical>\n\t\t\t\t<string>1</string>\n\t\t\t</tech");
    assertThat(ScoreMarker.mark(measure(flush), List.of(string(0, 1))))
        .contains("<pitch/>\n<notations>\n<technical>\n<string>1</string>\n</technical>\n</nota");
  }

  @Test
  void wordsAtANoteOnOneLineGetASeparateLine() {
    String line = "\n  <note><pitch/><voice>2</voice></note>\n";

    assertThat(ScoreMarker.mark(measure(line), List.of(words(0, "restez"))))
        .isEqualTo(
            measure(
                "\n  <direction placement=\"above\"><direction-type><words default-y=\"30\">restez</words>"
                    + "</direction-type><voice>2</voice></direction>"
                    + line));
  }

  @Test
  void wordsAtAChordNoteComeBeforeTheFirstNoteOfTheChord() {
    String grace = "<note><grace/><pitch/></note>";
    String head = "<note><pitch/><voice>1</voice></note>";
    String upper = "<note><chord/><pitch/><voice>1</voice></note>";
    String sign =
        "<direction placement=\"above\"><direction-type><words default-y=\"60\">%s</words>"
            + "</direction-type><voice>1</voice></direction>";

    assertThat(
            ScoreMarker.mark(
                measure(grace + head + upper + upper), List.of(words(3, "b"), words(1, "a"))))
        .isEqualTo(
            measure(grace + sign.formatted("a") + sign.formatted("b") + head + upper + upper));
  }

  @Test
  void restsGraceCueAndChordNotesAllCount() {
    String notes =
        "<note><rest/></note><note><grace/><pitch/></note><note><cue/><pitch/></note>"
            + "<note><pitch/></note><note><chord/><pitch/></note>";

    assertThat(ScoreMarker.mark(measure(notes), List.of(string(4, 2))))
        .isEqualTo(
            measure(
                notes.replace(
                    "<chord/><pitch/>",
                    "<chord/><pitch/><notations><technical><string>2</string></technical></notations>")));
  }

  @Test
  void wordsAreEscaped() {
    assertThat(ScoreMarker.mark(measure(tail("")), List.of(words(0, "<A & B> ]]>"))))
        .contains("<words default-y=\"30\">&lt;A &amp; B&gt; ]]&gt;</words>");
  }

  @Test
  void emptyNotesAndPrefixedElementsDoNoHarm() {
    assertThat(
            ScoreMarker.mark(
                measure("<note/><x:note a:b='1'/><note><x:chord/></note>"),
                List.of(string(0, 1), string(1, 1))))
        .isEqualTo(
            measure(
                "<note><notations><technical><string>1</string></technical></notations></note>"
                    + "<x:note a:b='1'/><note><x:chord/><notations><technical><string>1</string>"
                    + "</technical></notations></note>"));
  }

  @Test
  void entitiesDeclaredInTheDocumentAreKeptAndNeverExpanded() {
    String score =
        "<!DOCTYPE score-partwise [<!ENTITY a \"aaaa\"> <!ENTITY n SYSTEM \"file:///etc/passwd\">"
            + "]>\r\n"
            + measure("<note print-object=\"&a;\"><pitch>&a;&n;</pitch></note><note></note>");

    assertThat(ScoreMarker.mark(score, List.of(string(0, 1), string(1, 2))))
        .isEqualTo(
            score
                .replace(
                    "</pitch>",
                    "</pitch><notations><technical><string>1</string></technical></notations>")
                .replace(
                    "<note></note>",
                    "<note><notations><technical><string>2</string></technical></notations></note>"));
  }
}
