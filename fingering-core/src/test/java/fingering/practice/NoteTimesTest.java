package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.practice.NoteTimes.Bar;
import fingering.practice.NoteTimes.Change;
import fingering.practice.NoteTimes.Click;
import fingering.practice.NoteTimes.Click.Kind;
import fingering.practice.NoteTimes.Sound;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The times of notes in the order in which they are played. Repeats, endings, {@code times}, segno
 * and coda as in MusicXML 4.0 (elements {@code repeat}, {@code ending}, {@code segno}, {@code
 * coda}); where to go back to without a sign, and the wording of jumps: common practice, no source.
 */
class NoteTimesTest {
  private static final String BACK =
      "<barline location=\"right\"><repeat direction=\"backward\"%s/>" + "</barline>";
  private static final String FORTH =
      "<barline location=\"left\"><repeat direction=\"forward\"/></barline>";

  /**
   * Measures of one half note each, in 2/4, written as words: {@code ||} is a final bar line,
   * {@code |:} and {@code :|} are repeats, {@code :3|} one that is played three times, {@code [1}
   * begins an ending and {@code ]} ends it, {@code !} begins an attribute for playback, other words
   * are directions. A comma ends a measure.
   */
  private static Score score(String music) {
    return read(part(music));
  }

  private static String part(String music) {
    StringBuilder part = new StringBuilder();
    List<String> measures = Splitter.on(',').splitToList(music);
    for (int i = 0; i < measures.size(); i++) {
      StringBuilder before = new StringBuilder();
      StringBuilder after = new StringBuilder();
      for (String word : Splitter.on(' ').omitEmptyStrings().split(measures.get(i))) {
        String name = word.replace('_', ' ');
        switch (word) {
          case "x" -> {}
          case "|:" -> before.append(FORTH);
          case ":|" -> after.append(BACK.formatted(""));
          case ":3|" -> after.append(BACK.formatted(" times=\"3\""));
          case "||" ->
              after.append(
                  "<barline location=\"right\"><bar-style>light-heavy</bar-style></barline>");
          case "]" ->
              after.append(
                  "<barline location=\"right\"><ending number=\"1\" type=\"stop\"/></barline>");
          case "segno", "coda" ->
              before.append(
                  "<direction><direction-type><" + word + "/></direction-type></direction>");
          case "!segno", "!coda" -> before.append("<sound " + word.substring(1) + "=\"one\"/>");
          default -> {
            if (word.startsWith("!")) {
              after.append(
                  "<direction><direction-type><words>from the top</words></direction-type><sound "
                      + word.substring(1)
                      + "=\"yes\"/></direction>");
            } else if (word.startsWith("[")) {
              before.append(
                  "<barline location=\"left\"><ending number=\"%s\" type=\"start\"/></barline>"
                      .formatted(word.substring(1).replace('+', ',')));
            } else {
              after.append(
                  "<direction><direction-type><words>%s</words></direction-type></direction>"
                      .formatted(name));
            }
          }
        }
      }
      part.append("<measure number=\"%d\">".formatted(i + 1))
          .append(
              i > 0
                  ? ""
                  : "<attributes><divisions>1</divisions><time><beats>2</beats><beat-type>4"
                      + "</beat-type></time><clef><sign>G</sign><line>2</line></clef></attributes>")
          .append(before)
          .append(
              "<note><pitch><step>A</step><octave>4</octave></pitch><duration>2</duration></note>")
          .append(after)
          .append("</measure>");
    }
    return part.toString();
  }

  private static Score read(String... parts) {
    StringBuilder list = new StringBuilder();
    StringBuilder music = new StringBuilder();
    for (int i = 1; i <= parts.length; i++) {
      list.append("<score-part id=\"P%d\"><part-name>Violin</part-name></score-part>".formatted(i));
      music.append("<part id=\"P%d\">%s</part>".formatted(i, parts[i - 1]));
    }
    return ScoreReader.read(
        ScoreFile.of(
            "<score-partwise version=\"4.0\"><part-list>%s</part-list>%s</score-partwise>"
                .formatted(list, music),
            ImmutableList.of()));
  }

  private static NoteTimes times(Score score, PassageRequest request, String tempo) {
    Passage passage = score.passage(request);
    return NoteTimes.of(passage, score.printed(passage, Optional.empty()), Tempo.parse(tempo));
  }

  private static String order(NoteTimes times) {
    return times.measures().stream()
        .map(bar -> Integer.toString(bar.index() + 1))
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '=',
      value = {
        "x, x, x = 1 2 3",
        "x, x :|, x = 1 2 1 2 3",
        "x, |: x, x :|, x = 1 2 3 2 3 4",
        "x :|, x :| = 1 1 2 2",
        "x, |: x :3|, x = 1 2 2 2 3",
        "|: x, [1 x :| ], [2 x ], x = 1 2 1 3 4",
        "|: x, [1 x :| ], [2 x :| ], x = 1 2 1 3 4",
        "|: x, [1+2 x :| ], [3 x ] = 1 2 1 2 1 3",
        "|: x, [1 x, x :| ], [2 x ], |: x :| = 1 2 3 1 4 5 5",
        "|: x, [1 x :| ], x = 1 2 1 3",
        "|: x, [1 x ], x :|, x = 1 2 3 1 3 4",
        "x, x ||, x, x :|, x = 1 2 3 4 3 4 5",
        "x, x Fine, x D.C._al_Fine = 1 2 3 1 2",
        "x ||, x, x Fine ||, x D.C._al_Fine = 1 2 3 4 2 3",
        "x, segno x, x Fine, x D.S._al_Fine = 1 2 3 4 2 3",
        "x, segno x, x To_Coda, x D.S._al_Coda, coda x = 1 2 3 4 2 3 5",
        "x, x, coda x, x D.C._al_Coda, coda x = 1 2 3 4 1 2 5",
        "|: x, x :|, x D.C. = 1 2 1 2 3 1 2 3",
        "x, x Fine ||, x, x D.C. ||, |: x :| = 1 2 3 4 1 2 5 5",
        "x, x D.C. ||, x, x D.C. = 1 2 1 2 3 4 3 4",
        "x, x Fine ||, x D.C. ||, x, x Fine ||, x D.C. = 1 2 3 1 2 4 5 6 4 5",
        "x, x !fine, x !dacapo, x = 1 2 3 1 2 4",
        "x, x Fine !fine, x D.C. !dacapo = 1 2 3 1 2",
        "x, !segno x, x !fine, x !dalsegno, x = 1 2 3 4 2 3 5",
        "x, !segno x, x !tocoda, x !dalsegno, !coda x = 1 2 3 4 2 3 5",
        "x, segno x, x !tocoda, x !dalsegno, coda x = 1 2 3 4 2 3 5",
        "x, x !dalsegno, x !fine = 1 2 3",
        "|: x, [1 x :| ], [2 x Fine ], x Da_Capo_al_Fine = 1 2 1 3 4 1 3"
      })
  void repeatsArePlayed(String music, String order) {
    NoteTimes times = times(score(music), PassageRequest.WHOLE, "quarter=60");
    assertThat(order(times)).isEqualTo(order);
    // Two seconds to count in, and two for each measure.
    assertThat(times.length())
        .isEqualTo(2_000_000L * (Splitter.on(' ').splitToList(order).size() + 1));
    assertThat(times.sounds())
        .extracting(Sound::start)
        .isEqualTo(times.measures().stream().map(Bar::start).toList());
    assertThat(times.sounds())
        .extracting(sound -> sound.moment() + 1)
        .isEqualTo(
            Splitter.on(' ').splitToList(order).stream()
                .map(Integer::valueOf)
                .collect(Collectors.toList()));
  }

  /** A score often has them in its top part alone. */
  @Test
  void jumpsForPlaybackHoldForAllParts() {
    Score score = read(part("x, x !fine, x !dacapo, x"), part("x, x, x, x"));
    assertThat(order(times(score, PassageRequest.WHOLE.withPart("2"), "quarter=60")))
        .isEqualTo("1 2 3 1 2 4");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '=',
      value = {"2-4 = 2 3 4", "1-2 = 1 2", "1-3 = 1 2 1 3", "3-4 = 3 4", "2-3 = 2 3"})
  void signsWithoutTheirOtherHalfAreLeftOut(String measures, String order) {
    Score score = score("|: x, [1 x :| ], [2 x ], x");
    PassageRequest request = PassageRequest.WHOLE.withMeasures(measures);
    assertThat(order(times(score, request, "quarter=60"))).isEqualTo(order);
  }

  private static final String HEAD =
      "<attributes><divisions>1</divisions><time><beats>%d</beats><beat-type>%d</beat-type></time>"
          + "<clef><sign>G</sign><line>2</line></clef></attributes>";

  private static String note(String step, int length, String more) {
    return "<note><pitch><step>%s</step><octave>4</octave></pitch><duration>%d</duration>%s</note>"
        .formatted(step, length, more);
  }

  /** Four quarters, of which the last two are repeated: bar lines stand where they are needed. */
  @Test
  void repeatMayBeginWithinAMeasure() {
    NoteTimes times =
        times(
            read(
                "<measure number=\"1\">"
                    + HEAD.formatted(4, 4)
                    + note("C", 1, "")
                    + note("D", 1, "")
                    + "<barline location=\"middle\"><repeat direction=\"forward\"/></barline>"
                    + note("E", 1, "")
                    + note("F", 1, "")
                    + BACK.formatted("")
                    + "</measure>"),
            PassageRequest.WHOLE,
            "quarter=60");
    assertThat(times.sounds())
        .extracting(sound -> sound.note().midi())
        .containsExactly(60, 62, 64, 65, 64, 65);
    assertThat(times.sounds())
        .extracting(Sound::start)
        .containsExactly(4_000_000L, 5_000_000L, 6_000_000L, 7_000_000L, 8_000_000L, 9_000_000L);
    assertThat(times.measures())
        .containsExactly(
            new Bar(0, 4_000_000, 4_000_000, 4_000_000, 1_000_000),
            new Bar(0, 8_000_000, 2_000_000, 4_000_000, 1_000_000));
  }

  /** The tie leads to the first ending; the second time, the note stops at the sign. */
  @Test
  void tieEndsWhereTheMusicGoesElsewhere() {
    NoteTimes times =
        times(
            read(
                "<measure number=\"1\">"
                    + HEAD.formatted(2, 4)
                    + note("A", 2, "<tie type=\"start\"/>")
                    + "</measure><measure number=\"2\"><barline location=\"left\"><ending"
                    + " number=\"1\" type=\"start\"/></barline>"
                    + note("A", 2, "<tie type=\"stop\"/>")
                    + "<barline location=\"right\"><ending number=\"1\" type=\"stop\"/><repeat"
                    + " direction=\"backward\"/></barline></measure><measure number=\"3\">"
                    + note("B", 2, "")
                    + "</measure>"),
            PassageRequest.WHOLE,
            "quarter=60");
    assertThat(times.sounds())
        .extracting(Sound::start)
        .containsExactly(2_000_000L, 6_000_000L, 8_000_000L);
    assertThat(times.sounds())
        .extracting(Sound::length)
        .containsExactly(4_000_000L, 2_000_000L, 2_000_000L);
  }

  /** The second measure is twice as slow, each time. */
  @Test
  void repeatGoesBackToItsTempo() {
    String slow =
        "<direction><direction-type><metronome><beat-unit>quarter</beat-unit>"
            + "<per-minute>%d</per-minute></metronome></direction-type></direction>";
    NoteTimes times =
        times(
            read(
                "<measure number=\"1\">"
                    + HEAD.formatted(2, 4)
                    + slow.formatted(120)
                    + note("A", 2, "")
                    + "</measure><measure number=\"2\">"
                    + slow.formatted(60)
                    + note("B", 2, "")
                    + BACK.formatted("")
                    + "</measure>"),
            PassageRequest.WHOLE,
            "quarter=120");
    assertThat(times.tempi())
        .extracting(Change::start)
        .containsExactly(0L, 2_000_000L, 4_000_000L, 5_000_000L);
    assertThat(times.length()).isEqualTo(7_000_000);
    assertThat(times.measures())
        .extracting(Bar::full)
        .containsExactly(1_000_000L, 2_000_000L, 1_000_000L, 2_000_000L);
  }

  @ParameterizedTest
  @CsvSource({"2, 4, quarter=60, 2", "6, 8, dotted-quarter=60, 3"})
  void beatsAreSubdivided(int beats, int type, String tempo, int parts) {
    int length = type == 4 ? beats : beats / 2;
    NoteTimes times =
        times(
            read(
                "<measure number=\"1\">"
                    + HEAD.formatted(beats, type)
                    + note("A", length, "")
                    + "</measure>"),
            PassageRequest.WHOLE,
            tempo);
    List<Click> played =
        times.clicks().stream().filter(click -> click.start() >= times.countIn()).toList();
    assertThat(played).hasSize(2 * parts);
    for (int i = 0; i < played.size(); i++) {
      Kind kind = i == 0 ? Kind.FIRST : i == parts ? Kind.BEAT : Kind.SUBDIVISION;
      assertThat(played.get(i)).isEqualTo(new Click(2_000_000 + Math.round(i * 1e6 / parts), kind));
    }
  }
}
