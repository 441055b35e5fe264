package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.PlannedNote;
import fingering.scoring.rules.StandardRules;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What to circle in a part; common practice, no source. */
class CircleFinderTest {
  private static final String HEAD =
      "<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time>"
          + "<clef><sign>G</sign><line>2</line></clef></attributes>";

  private static String sign(String xml) {
    return "<direction><direction-type>" + xml + "</direction-type></direction>";
  }

  private static String dynamic(String letters) {
    return sign("<dynamics><" + letters + "/></dynamics>");
  }

  private static String words(String words) {
    return sign("<words>" + words + "</words>");
  }

  private static String quarters(int number) {
    return "<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration></note>"
        .repeat(number);
  }

  private static String rest(int quarters) {
    return "<note><rest/><duration>" + quarters + "</duration></note>";
  }

  private static List<String> circles(String... measures) {
    StringBuilder part = new StringBuilder();
    for (int i = 0; i < measures.length; i++) {
      part.append("<measure number=\"" + (i + 1) + "\">" + (i == 0 ? HEAD : "") + measures[i]);
      part.append("</measure>");
    }
    String text =
        "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Violin"
            + "</part-name></score-part></part-list><part id=\"P1\">"
            + part
            + "</part></score-partwise>";
    Score score = ScoreReader.read(ScoreFile.of(text, ImmutableList.of()));
    Passage passage = score.passage(PassageRequest.WHOLE);
    return CircleFinder.of(passage, score.printed(passage, Optional.empty())).stream()
        .map(circle -> circle.kind() + " " + circle.place().measure() + ": " + circle.text())
        .toList();
  }

  @Test
  void suddenDynamicsComeFirst() {
    assertThat(
            circles(
                dynamic("p") + quarters(4),
                dynamic("mp") + quarters(4),
                dynamic("ff") + quarters(4),
                dynamic("p") + words("sub.") + quarters(4),
                dynamic("sf") + quarters(4)))
        .containsExactly(
            "SUDDEN 3: sudden ff after mp",
            "SUDDEN 4: p subito",
            "SUDDEN 5: sf: sudden",
            "DYNAMIC 1: p",
            "DYNAMIC 2: mp");
  }

  @Test
  void otherDynamicsAreShownAsPrinted() {
    assertThat(
            circles(
                sign("<dynamics><other-dynamics>sfzp</other-dynamics></dynamics>") + quarters(4)))
        .containsExactly("SUDDEN 1: sfzp: sudden");
  }

  @Test
  void dynamicAtTheEndOfAHairpinIsNotSudden() {
    assertThat(
            circles(
                dynamic("p") + sign("<wedge type=\"crescendo\"/>") + quarters(4),
                quarters(4),
                quarters(4),
                sign("<wedge type=\"stop\"/>") + dynamic("f") + quarters(4)))
        .containsExactly(
            "LONG_HAIRPIN 1: crescendo from p to f over 3 measures: start softer than you think,"
                + " and do not get loud before measure 2",
            "DYNAMIC 1: p",
            "DYNAMIC 4: f");
  }

  /** At quarter = 96, the default here, a quarter rest takes 0.6 s and a half rest 1.3 s. */
  @Test
  void pizzicatoAndArcoShowTheTimeForTheChange() {
    assertThat(
            circles(
                quarters(2) + rest(2),
                words("pizz.") + quarters(2) + rest(2),
                words("arco") + quarters(4),
                words("pizz.") + quarters(3) + rest(1),
                words("arco") + quarters(4)))
        .containsExactly(
            "CHANGE 2: pizz.: 1.3 s of rest before it, time to change your hold",
            "CHANGE 3: arco: 1.3 s of rest before it, time to find the bow hold",
            "CHANGE 4: pizz.: no rest before it, keep the bow in your hand",
            "CHANGE 5: arco: 0.6 s of rest before it, have the bow ready");
  }

  @Test
  void findsMutesStringsRepeatsAccentsAndTempi() {
    String accented =
        "<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration><notations>"
            + "<articulations><accent/></articulations></notations></note>";
    assertThat(
            circles(
                words("Allegro")
                    + sign(
                        "<metronome><beat-unit>quarter</beat-unit><per-minute>96</per-minute>"
                            + "</metronome>")
                    + quarters(2)
                    + accented.repeat(2),
                words("con sord.") + quarters(4),
                words("sul G")
                    + quarters(4)
                    + "<barline location=\"right\"><repeat direction=\"backward\"/></barline>"))
        .containsExactly(
            "CHANGE 2: con sord.: no rest before it, not enough: practise the move on its own",
            "CHANGE 3: sul G: no rest before it",
            "ACCENT 1: accents on beats 3, 4",
            "WORDS 1: Allegro",
            "WORDS 1: quarter = 96",
            "REPEAT 3: repeat at the end of this measure: find where to go back to");
  }

  private static String note(String step, int alter, String accidental) {
    return "<note><pitch><step>"
        + step
        + "</step><alter>"
        + alter
        + "</alter><octave>4</octave></pitch><duration>1</duration>"
        + (accidental.isEmpty() ? "" : "<accidental>" + accidental + "</accidental>")
        + "</note>";
  }

  @Test
  void accidentalOutsideTheKeyIsCircledWhereItIsPrintedAndWhereItHolds() {
    assertThat(
            circles(
                note("F", 1, "sharp")
                    + note("G", 0, "")
                    + note("F", 1, "")
                    + note("F", 0, "natural"),
                note("F", 0, "") + quarters(3)))
        .containsExactly(
            "READING 1: F♯: not in the key",
            "READING 1: still F♯: the sharp of beat 1 holds",
            "READING 1: F natural again");
  }

  @Test
  void sharpInTheKeyIsNoAccidental() {
    assertThat(
            circles(
                "<attributes><key><fifths>1</fifths></key></attributes>"
                    + note("F", 1, "").repeat(4)))
        .isEmpty();
  }

  @Test
  void tiedNoteIsNotReadAgain() {
    String tied =
        note("F", 1, "sharp")
            .replace("</note>", "<tie type=\"start\"/></note>")
            .replace(
                "<accidental>sharp</accidental><tie type=\"start\"/>",
                "<tie type=\"start\"/><accidental>sharp</accidental><notations><tied"
                    + " type=\"start\"/></notations>");
    String end =
        note("F", 1, "")
            .replace(
                "</note>",
                "<tie type=\"stop\"/><notations><tied type=\"stop\"/></notations></note>");
    assertThat(circles(quarters(3) + tied, end + quarters(3)))
        .containsExactly("READING 1: F♯: not in the key");
  }

  @Test
  void newClefIsCircled() {
    assertThat(
            circles(
                quarters(4),
                "<attributes><clef><sign>C</sign><line>3</line></clef></attributes>" + quarters(4),
                quarters(4)))
        .containsExactly("READING 2: alto clef");
  }

  @Test
  void signsAlikeAreOneLine() {
    assertThat(
            circles(
                dynamic("f") + quarters(4),
                dynamic("fz") + quarters(4),
                dynamic("fz") + quarters(2) + dynamic("fz") + quarters(2),
                dynamic("fz") + quarters(4)))
        .containsExactly("SUDDEN 2: fz: sudden; also in m. 3, 4", "DYNAMIC 1: f");
  }

  @Test
  void dynamicThatAppliesAlreadyIsNotSudden() {
    assertThat(
            circles(
                dynamic("p") + quarters(4),
                dynamic("p") + words("sub.") + quarters(4),
                dynamic("fp") + quarters(4),
                dynamic("p") + quarters(4)))
        .containsExactly(
            "SUDDEN 3: fp: sudden",
            "DYNAMIC 1: p",
            "DYNAMIC 2: p, as before",
            "DYNAMIC 4: p, as before");
  }

  @Test
  void softDynamicAfterAnAccentOrACrescendoIsSudden() {
    assertThat(
            circles(
                dynamic("f") + quarters(4),
                dynamic("sfz") + quarters(4),
                dynamic("p") + quarters(4),
                sign("<wedge type=\"crescendo\"/>")
                    + quarters(3)
                    + sign("<wedge type=\"stop\"/>")
                    + quarters(1),
                dynamic("p") + quarters(4)))
        .containsExactly(
            "SUDDEN 2: sfz: sudden",
            "SUDDEN 3: sudden p after f",
            "SUDDEN 5: sudden p after the crescendo",
            "DYNAMIC 1: f",
            "DYNAMIC 4: crescendo");
  }

  @Test
  void shiftsOfAPlanAreCircled() {
    Score score = ScoreReader.read(ScoreFile.read(Path.of("..", "docs", "demo", "demo.musicxml")));
    Passage passage = score.passage(PassageRequest.WHOLE);
    Plan plan =
        PlanComparer.of(passage, StandardRules.commonPractice(), LeftHand.MEDIUM, ImmutableSet.of())
            .partlyUpperPlan()
            .orElseThrow();
    assertThat(CircleFinder.of(plan, score.printed(passage, Optional.empty())))
        .filteredOn(circle -> circle.kind() == Circle.Kind.SHIFT)
        .hasSameSizeAs(plan.notes().stream().filter(PlannedNote::shift).toList())
        .extracting(Circle::text)
        .contains("shift to 3rd, finger 1");
  }
}
