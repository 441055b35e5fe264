package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A score is opened or dropped, and part, measures and tempo are chosen. */
class OpenScoreTest extends ServedFolder {
  private static final Pattern LINE = Pattern.compile("class=\"system\" id=\"(s-[\\d-]+)\"");

  private String dropped(String name, String content) throws Exception {
    HttpResponse<String> answer = visitor.drop(name, content.getBytes(StandardCharsets.UTF_8));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private String demo() throws Exception {
    return dropped("demo.musicxml", Files.readString(Session.DEMO));
  }

  private static List<String> lines(String html) {
    return LINE.matcher(html).results().map(MatchResult::group).toList();
  }

  /** The text of the verdict without tags. */
  private static String verdict(String html) {
    return html.lines()
        .filter(line -> line.contains("class=\"answer\""))
        .map(line -> line.replaceAll("<[^>]*>", "").replace("&#39;", "'").strip())
        .collect(Collectors.joining());
  }

  private static String printed(Object... arguments) {
    return String.join(" ", Session.of(arguments).succeeded().lines()).replaceAll(" +", " ");
  }

  @Test
  void emptyFolderSaysWhatToDo() throws Exception {
    assertThat(visitor.get("/").body()).contains("drop a score below, or type an excerpt");
  }

  @Test
  void droppedScoreIsAnsweredAsOnTheCommandLine() throws Exception {
    String address = demo();
    assertThat(visitor.get(address).body()).contains("<h1 id=\"title\">Lanterns on the Millrace");

    String plans = visitor.get(address + "/plans?window=1200").body();
    assertThat(verdict(plans)).startsWith("Take 'partly 3rd'");
    assertThat(printed("compare", Session.DEMO)).contains(verdict(plans));
    assertThat(lines(plans)).hasSizeGreaterThan(3);
  }

  @Test
  void chosenMeasuresAndTempoAreAnsweredAsOnTheCommandLine() throws Exception {
    String address = demo();
    String answer =
        visitor
            .post(
                address + "/choice",
                "revision=0&part=1&measures=3-9&tempo=quarter%3D60&window=1200")
            .body();

    assertThat(verdict(answer)).isNotEmpty();
    assertThat(printed("compare", Session.DEMO, "--measures", "3-9", "--tempo", "quarter=60"))
        .contains(verdict(answer));
    assertThat(answer).contains("id=\"revision\" value=\"1\"", "measures 3–9");
  }

  @Test
  void chosenInstrumentIsAnsweredAsOnTheCommandLine() throws Exception {
    String address = demo();
    String answer =
        visitor.post(address + "/choice", "revision=0&part=1&instrument=cello&window=1200").body();

    assertThat(verdict(answer)).isNotEmpty();
    assertThat(printed("compare", Session.DEMO, "--instrument", "cello")).contains(verdict(answer));
    assertThat(answer).contains("Cello, measures 0–32", "data-instrument=\"cello\"");
    assertThat(visitor.get(address).body()).contains("<option value=\"cello\" selected>Cello<");
    assertThat(visitor.post(address + "/choice", "revision=1&part=1&instrument=").body())
        .contains("Viola, measures 0–32", "data-instrument=\"\"");
  }

  @Test
  void musicThatCannotBePlannedAtFirstCanBeOnceAnInstrumentIsChosen() throws Exception {
    String address =
        dropped(
            "unnamed.musicxml",
            Files.readString(Session.DEMO)
                .replaceFirst("(?s)<clef>.*?</clef>", "")
                .replaceFirst(
                    "(?s)<score-part .*?</score-part>",
                    "<score-part id=\"P1\"><part-name>Music</part-name></score-part>"));

    HttpResponse<String> unknown = visitor.get(address + "/plans?window=1200");
    assertThat(unknown.statusCode()).isEqualTo(Reply.UNUSABLE);
    assertThat(unknown.body()).contains("Neither the name nor the clef of Music shows");
    assertThat(
            verdict(
                visitor
                    .post(address + "/choice", "revision=0&part=1&instrument=viola&window=1200")
                    .body()))
        .startsWith("Take 'partly 3rd'");
  }

  @Test
  void onlyLinesThatChangeAreSentAgain() throws Exception {
    String address = demo();
    List<String> all = lines(visitor.get(address + "/plans?window=1200").body());

    String same = visitor.post(address + "/choice", "revision=0&part=1&window=1200").body();
    assertThat(lines(same)).isEmpty();
    assertThat(same).doesNotContain("id=\"music\"");

    String slower =
        visitor.post(address + "/choice", "revision=1&part=1&tempo=60&window=1200").body();
    assertThat(lines(slower)).hasSizeLessThan(all.size());

    String narrow =
        visitor.post(address + "/choice", "revision=2&part=1&tempo=60&window=400").body();
    assertThat(narrow).contains("id=\"music\"");
    assertThat(lines(narrow)).hasSizeGreaterThan(all.size());
  }

  @Test
  void secondPageGetsAllTheMusicAndTheFirstTheirChange() throws Exception {
    String address = demo();
    visitor.get(address + "/plans?window=1200");
    Visitor other = new Visitor(server).at(server.address());
    assertThat(other.get(address + "/plans?window=1200").body()).contains("id=\"music\"");
    assertThat(other.post(address + "/choice", "revision=0&part=1&measures=1-8").body())
        .contains("value=\"1\"");

    String stale =
        visitor.post(address + "/choice", "revision=0&part=1&measures=9-12&window=1200").body();
    assertThat(stale)
        .contains("was changed in another window", "value=\"1\"", "measures 1–8", "id=\"music\"");
  }

  @ParameterizedTest
  @CsvSource({
    "measures=99, has no measures '99'",
    "tempo=fast, is not a tempo",
    "part=7, has no part '7'",
    "instrument=flute, 'flute'"
  })
  void wrongChoiceIsASentenceAndTheScoreStays(String field, String sentence) throws Exception {
    String address = demo();
    HttpResponse<String> wrong = visitor.post(address + "/choice", "revision=0&part=1&" + field);
    assertThat(wrong.statusCode()).isEqualTo(400);
    assertThat(wrong.body().replace("&#39;", "'")).contains(sentence).doesNotContain("Exception");
    assertThat(wrong.headers().firstValue("HX-Retarget")).contains("#trouble");
    assertThat(visitor.post(address + "/choice", "revision=0&part=1&measures=1-4").statusCode())
        .isEqualTo(200);
  }

  @Test
  void scoreWithFortyPartsBeginsWithTheStrings() throws Exception {
    String parts =
        IntStream.rangeClosed(1, 40)
            .mapToObj(
                part ->
                    "<score-part id=\"P%d\"><part-name>%s</part-name></score-part>"
                        .formatted(part, part == 38 ? "Viola" : "Flute " + part))
            .collect(Collectors.joining());
    String music =
        IntStream.rangeClosed(1, 40)
            .mapToObj(
                part ->
                    ("<part id=\"P%d\"><measure number=\"1\"><attributes><divisions>1</divisions>"
                            + "<time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>%s"
                            + "</sign><line>%d</line></clef></attributes><note><pitch><step>E</step>"
                            + "<octave>4</octave></pitch><duration>4</duration><type>whole</type>"
                            + "</note></measure></part>")
                        .formatted(part, part == 38 ? "C" : "G", part == 38 ? 3 : 2))
            .collect(Collectors.joining());
    String address =
        dropped(
            "large.xml",
            "<score-partwise version=\"4.0\"><part-list>%s</part-list>%s</score-partwise>"
                .formatted(parts, music));

    String page = visitor.get(address).body();
    assertThat(
            page.replaceFirst("(?s).*<select name=\"part\">(.*?)</select>.*", "$1")
                .split("<option ", -1))
        .hasSize(41);
    assertThat(page).containsPattern("<option value=\"38\" selected>38 Viola<");
    assertThat(visitor.get(address + "/plans").body()).contains("Viola, measure 1, 1 note");
    assertThat(visitor.post(address + "/choice", "revision=0&part=2").body())
        .contains("Flute 2")
        .doesNotContain("Exception", "unexpectedly");
    assertThat(visitor.get("/").body()).contains("large.xml, Flute 2<");
  }

  @ParameterizedTest
  @CsvSource({
    "part.pdf, A PDF has no notes",
    "scan.JPG, A picture has no notes",
    "part.mid, A recording or MIDI file",
    "part.sib, Only the notation program that made this file",
    "part.other, choose Export and MusicXML",
    "noending, choose Export and MusicXML",
    "part.musicxml, is not MusicXML",
    "part.mxl, is not MusicXML"
  })
  void nonsenseGetsOneSentence(String name, String sentence) throws Exception {
    HttpResponse<String> answer =
        visitor.drop(name, "Nothing musical ".getBytes(StandardCharsets.UTF_8));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body())
        .contains(sentence)
        .doesNotContain("Exception", "unexpectedly", "null", "/tmp", "fingering");
    assertThat(answer.body().strip()).startsWith("<p>").endsWith(".</p>").hasLineCount(1);
  }

  @Test
  void nameOfADroppedFileNamesNoPlace(@TempDir Path outside) throws Exception {
    String address = dropped("../../" + outside + "/x<b>.musicxml", TITLELESS);
    assertThat(visitor.get(address).body())
        .contains("<h1 id=\"title\">x&lt;b&gt;.musicxml</h1>")
        .doesNotContain("../", outside.toString());
    try (Stream<Path> files = Files.list(outside)) {
      assertThat(files).isEmpty();
    }
  }

  private static final String TITLELESS =
      "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Cello</part-name>"
          + "</score-part></part-list><part id=\"P1\"><measure number=\"1\"><attributes><divisions>1"
          + "</divisions><clef><sign>F</sign><line>4</line></clef></attributes><note><pitch><step>E"
          + "</step><octave>3</octave></pitch><duration>4</duration></note></measure></part>"
          + "</score-partwise>";

  @Test
  void lessonOfTheFolderOpensWithItsChoice() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Files.writeString(
        folder.resolve("lantern.yaml"),
        "score: demo.musicxml\nmeasures: 17-24\ntempo: quarter = 80\n");
    String home = visitor.get("/").body();
    String address = home.replaceFirst("(?s).*(/open/[\\w-]+)\">lantern.*", "$1");

    assertThat(visitor.get(address).body()).contains("value=\"17-24\"", "value=\"quarter=80\"");
    assertThat(visitor.get(address + "/plans").body()).contains("measures 17–24", "quarter = 80");
  }

  @Test
  void fileThatTheProgramIsStartedWithIsOpenAtOnce() throws Exception {
    HttpResponse<String> entered = new Visitor(server).enter(server.addressOf(Session.DEMO));
    assertThat(entered.headers().firstValue("Location").orElseThrow()).startsWith("/open/");
  }

  @Test
  void livePageHasNoStyleOrScriptOfItsOwn() throws Exception {
    String address = demo();
    String all = visitor.get(address).body() + visitor.get(address + "/plans").body();
    assertThat(all)
        .doesNotContainPattern("<style|\\sstyle=|\\son[a-z]+=|javascript:|https?://")
        .doesNotContainPattern("<script(?! src=\"/)");
  }
}
