package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.advice.LessonAdviser;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An excerpt is typed on the local page, drawn, and saved in the folder. */
class TypeTest {
  private static final String HEAD =
      "X:1\nT:Weir\nV:1 name=\"Viola\"\nM:4/4\nL:1/4\nK:C clef=alto\n";
  private static final String TUNE = HEAD + "C D E F | G A B c |]\n";
  private static final Pattern FAULT =
      Pattern.compile("data-line=\"(\\d+)\" data-column=\"(\\d+)\">[^<]*</button> ([^<]*)<");
  private static final Pattern HASH = Pattern.compile("data-hash=\"(\\w+)\"");

  @TempDir Path home;

  private final Visitor.SetClock clock = new Visitor.SetClock();
  private Path folder;
  private LocalServer server;
  private Visitor visitor;
  private String page;

  @BeforeEach
  void start() throws Exception {
    folder = home.resolve("Fingering");
    server = LocalServer.start(folder, new LessonAdviser(), clock);
    visitor = new Visitor(server).at(server.address());
    page = fresh("/type");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private String fresh(String path) throws Exception {
    HttpResponse<String> answer = visitor.get(path);
    assertThat(answer.statusCode()).isEqualTo(303);
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private String drawn(String text) throws Exception {
    return drawn(text, "");
  }

  private String drawn(String text, String more) throws Exception {
    HttpResponse<String> answer = visitor.post(page + "/draw", "text=" + encoded(text) + more);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return answer.body().replace("&#39;", "'").replace("&#34;", "\"");
  }

  private HttpResponse<String> save(String address, String text, String name) throws Exception {
    return visitor.post(address + "/save", "text=" + encoded(text) + "&name=" + encoded(name));
  }

  private void saved(String text, String name) throws Exception {
    HttpResponse<String> answer = save(page, text, name);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
  }

  private static void assertRefused(HttpResponse<String> answer, String sentence) {
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body().replace("&#34;", "\"")).contains(sentence).hasLineCount(1);
  }

  private static List<String> faults(String html) {
    return FAULT
        .matcher(html)
        .results()
        .map(fault -> fault.group(1) + ":" + fault.group(2) + " " + fault.group(3))
        .toList();
  }

  private static List<String> hashes(String html) {
    return HASH.matcher(html).results().map(MatchResult::group).toList();
  }

  private List<String> files() throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void newPageIsForTheInstrumentOfTheStudents() throws Exception {
    Path students = Files.createDirectories(folder.resolve("students"));
    Files.writeString(students.resolve("imke.yaml"), "instrument: viola\n");
    assertThat(visitor.get(fresh("/type")).body()).contains("K:C clef=alto\nC,2 G,2 D2 A2 |");
  }

  @Test
  void firstPageLeadsToAPageWithFieldsAndOpenStrings() throws Exception {
    assertThat(visitor.get("/").body())
        .contains("<a href=\"/type\">Type an excerpt from paper</a>");
    assertThat(visitor.get(page).body())
        .contains("K:C clef=treble\nG,2 D2 A2 e2 |", "data-unsaved=\"false\"")
        .contains("B♭ major", "F♯ minor", "Double bass", "How to write notes");
    assertThat(visitor.get(page).body())
        .doesNotContainPattern("<style|\\sstyle=|\\son[a-z]+=|javascript:|https?://")
        .doesNotContainPattern("<script(?! src=\"/)");
  }

  @Test
  void typedMusicIsDrawnForTheWidthOfItsPlace() throws Exception {
    String text = HEAD + "C D E F | G A B c |".repeat(8);
    String wide = drawn(text, "&width=700");
    String narrow = drawn(text, "&width=360");

    assertThat(wide).contains("<svg role=\"img\"", "Measure 1: C4, D4, E4, F4.");
    assertThat(wide).contains("16 measures. Nothing to correct.", "data-measures=\"7:1 7:11 ");
    assertThat(hashes(narrow)).hasSizeGreaterThan(hashes(wide).size());
  }

  @Test
  void linesThatThePageShowsAreNotSentAgain() throws Exception {
    String text = HEAD + "C D E F | G A B c |\n".repeat(8);
    String first = drawn(text);
    String known =
        HASH.matcher(first).results().map(hash -> hash.group(1) + " ").reduce("", String::concat);
    String second = drawn(text.stripTrailing() + " c2", "&known=" + encoded(known));

    assertThat(first.split("<svg", -1)).hasSizeGreaterThan(3);
    assertThat(second.split("<svg", -1)).hasSize(2);
    assertThat(hashes(second)).hasSameSizeAs(hashes(first));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      value = {
        "C D E F | G A k B c |] @ 7:15 the sign 'k' is not used in ABC; it was left out.",
        "C D E F | G A B | c4 |] @ 7:11 measure 2 has 3 beats, 4 expected.",
        "C D E F | G A B c/ | c4 |] @ 7:11 measure 2 has 3½ beats, 4 expected.",
        "C D E F | G A B c (3def | c4 |] @ 7:11 measure 2 has 6 beats, 4 expected.",
        "[M:6/8] C D E | F G A/ | c3 |] @ 7:17 measure 2 has 5 eighths, 6 expected.",
        "[M:2/2] C4 | D3/2 | c4 |] @ 7:14 measure 2 has ¾ half note, 2 expected.",
        "C D E F | G, A, B,, C | c4 |] @ "
            + "7:11 measure 2: B2 is below the lowest string of the viola; check the octave."
      })
  void faultIsNamedWithItsPlaceAndTheRestIsDrawn(String notes, String fault) throws Exception {
    String html = drawn(HEAD + notes);
    assertThat(faults(html)).containsExactly(fault);
    assertThat(html).contains("1 place to look at:", "Measure 1: C4");
  }

  @Test
  void measureThatDoesNotAddUpIsMarkedInTheMusic() throws Exception {
    assertThat(drawn(HEAD + "C D E F | G A B | c4 |]"))
        .contains("data-misfits=\"1\"", "<rect class=\"target\" id=\"m1\"");
  }

  @Test
  void sameFaultIsNamedAtEachOfItsPlaces() throws Exception {
    assertThat(faults(drawn(HEAD + "C D E F k | G A B c k |]")))
        .extracting(fault -> fault.substring(0, 5))
        .containsExactly("7:9 t", "7:21 ");
  }

  @Test
  void pickupIsNamed() throws Exception {
    assertThat(drawn(HEAD + "G | C D E F | G A B |]")).contains("A pickup and 2 measures.");
  }

  @ParameterizedTest
  @CsvSource({
    "'', There are no notes yet",
    "'X:1\nK:G clef=alto\n', There are no notes yet",
    "'X:1\nK:G\nz4|\n', There are no notes yet",
    "'X:1\nK:G\nA|\n\nX:2\nK:C\nB|', There are 2 pieces"
  })
  void textWithoutMusicSaysWhatToDo(String text, String sentence) throws Exception {
    assertThat(drawn(text)).contains(sentence).doesNotContain("<svg", "Exception");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "K:C\n[",
        "\"^",
        "!!!",
        "(((",
        "A",
        "%",
        "K:\n\u0000\uffff",
        "V:1\nV:2\nA|\nV:1\nB|"
      })
  void nonsenseIsAnsweredWithASentence(String text) throws Exception {
    assertThat(drawn(text))
        .contains("<p id=\"heard\" role=\"status\">")
        .doesNotContain("Exception");
  }

  @Test
  void textIsThereAgainAfterAReload() throws Exception {
    drawn(TUNE);
    assertThat(visitor.get(page).body()).contains("C D E F | G A B c |]", "data-unsaved=\"true\"");
    String other = fresh("/type");
    assertThat(visitor.get(other).body())
        .contains("Typed but not saved:", "<a href=\"" + page + "\">Weir</a>");
    assertThat(visitor.get("/type/aaaaaaaaaaaaaaaaaaaaaaaa").statusCode()).isEqualTo(303);
  }

  @Test
  void savedTextIsPlannedAndEditedAgain() throws Exception {
    HttpResponse<String> answer = save(page, TUNE, "weir");
    assertThat(answer.body()).contains("Saved as weir.abc", ">Plan it</a>");
    assertThat(folder.resolve("weir.abc")).hasContent(TUNE);
    assertThat(visitor.get(page).body()).contains("data-unsaved=\"false\"", "value=\"weir\"");

    String score = answer.body().replaceFirst("(?s).*href=\"([^\"]*)\".*", "$1");
    assertThat(visitor.get(score).body()).contains("<h1 id=\"title\">Weir");
    assertThat(visitor.get(score + "/plans").body()).contains("Viola, measures 1–2, 8 notes");
    String edit = visitor.get(score).body().replaceFirst("(?s).*href=\"(/type[^\"]*)\".*", "$1");
    page = fresh(edit);
    assertThat(visitor.get(page).body()).contains("C D E F | G A B c |]", "value=\"weir\"");

    saved(TUNE.replace("|]", "| c4 |]"), "weir");
    assertThat(visitor.get(score + "/plans").body()).contains("Viola, measures 1–3, 9 notes");
  }

  @Test
  void textBeforeTheFirstChangeOfADayIsKept() throws Exception {
    saved(TUNE, "weir");
    saved(TUNE + "% one\n", "weir.abc");
    saved(TUNE + "% two\n", "weir");
    assertThat(files()).containsExactly("weir.abc", "weir.abc.2026-12-01~");
    assertThat(folder.resolve("weir.abc")).hasContent(TUNE + "% two\n");
    assertThat(folder.resolve("weir.abc.2026-12-01~")).hasContent(TUNE);
    clock.advance(24 * 3600);
    saved(TUNE, "weir");
    assertThat(files()).hasSize(3);
  }

  @Test
  void otherFileIsNeverReplaced() throws Exception {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("mine.abc"), "X:1\nK:C\nA|\n");
    assertRefused(save(page, TUNE, "mine"), "There is already a file mine.abc");
    assertThat(folder.resolve("mine.abc")).hasContent("X:1\nK:C\nA|\n");

    saved(TUNE, "weir");
    assertRefused(save(fresh("/type"), TUNE, "weir"), "There is already a file weir.abc");
    Files.writeString(folder.resolve("weir.abc"), "changed elsewhere");
    assertRefused(save(page, TUNE, "weir"), "weir.abc was changed by another program");
    assertThat(folder.resolve("weir.abc")).hasContent("changed elsewhere");
    assertThat(visitor.get(page).body()).contains("C D E F | G A B c |]");
  }

  @ParameterizedTest
  @CsvSource({
    "'', Give the file a name",
    "' .abc', Give the file a name",
    "../weir, A file name cannot",
    "/etc/weir, A file name cannot",
    "'a\\b', A file name cannot",
    ".weir, A file name cannot",
    "'we\u0001ir', A file name cannot"
  })
  void unusableNameIsSaidAndNothingIsWritten(String name, String sentence) throws Exception {
    assertRefused(save(page, TUNE, name), sentence);
    assertThat(folder).doesNotExist();
    assertThat(visitor.get(page).body()).contains("C D E F | G A B c |]");
  }

  @Test
  void linkOutOfTheFolderIsNotWrittenThrough() throws Exception {
    Files.createDirectories(folder);
    Path outside = Files.writeString(home.resolve("outside.abc"), TUNE);
    Files.createSymbolicLink(folder.resolve("weir.abc"), outside);
    assertRefused(save(page, TUNE + "A", "weir"), "There is already a file weir.abc");
    assertThat(outside).hasContent(TUNE);
  }

  @Test
  void onlyTypedScoresOfTheFolderAreEdited() throws Exception {
    HttpResponse<String> dropped = visitor.drop("weir.abc", TUNE.getBytes(StandardCharsets.UTF_8));
    String address = dropped.headers().firstValue("Location").orElseThrow();
    assertThat(visitor.get(address).body()).doesNotContain("/type?score=");
    assertThat(visitor.get(fresh("/type?score=" + address.replace("/open/", ""))).body())
        .contains("G,2 D2 A2 e2 |");
  }

  @Test
  void longTextIsRefused() throws Exception {
    assertRefused(
        visitor.post(page + "/draw", "text=" + "A".repeat(250_000)), "more text than an excerpt");
  }
}
