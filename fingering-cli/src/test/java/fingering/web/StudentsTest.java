package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.advice.LessonAdviser;
import fingering.lesson.StoredLesson;
import fingering.web.folder.StudentsFolder;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Students are listed, made and changed. */
class StudentsTest {
  private static final String IMKE = "# fifth year\ninstrument: viola\npositions: 1 # so far\n";
  private static final Pattern STUDENT = Pattern.compile("/students/[\\w-]{24}");
  private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"(\\w*)\"");

  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;

  @BeforeEach
  void start() throws Exception {
    server = LocalServer.start(folder, new LessonAdviser(), new Visitor.SetClock());
    visitor = new Visitor(server).at(server.address());
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private Path file(String name) {
    return folder.resolve("students").resolve(name);
  }

  private Path written(String name, String text) throws IOException {
    Files.createDirectories(folder.resolve("students"));
    return Files.writeString(file(name), text);
  }

  private static String found(Pattern pattern, String html, int group) {
    Matcher matcher = pattern.matcher(html);
    assertThat(matcher.find()).as(html).isTrue();
    return matcher.group(group);
  }

  private String address() throws Exception {
    return found(STUDENT, visitor.get("/students").body(), 0);
  }

  private String seen(String address) throws Exception {
    return found(SEEN, visitor.get(address).body(), 1);
  }

  private HttpResponse<String> made(String name, String more) throws Exception {
    return visitor.post(
        "/students/new",
        "seen=&name=" + URLEncoder.encode(name, StandardCharsets.UTF_8) + "&" + more);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("students"))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void emptyListSaysWhatToDo() throws Exception {
    assertThat(visitor.get("/").body()).contains("href=\"/students\"");
    assertThat(visitor.get("/students").body())
        .contains("There are no students", "add the first one", "href=\"/students/new\"");
  }

  @Test
  void newStudentNeedsNameInstrumentAndLevelOnly() throws Exception {
    String shaped =
        visitor
            .post(
                "/students/new/form",
                "name=Anna-Lena K.&instrument=viola&level=beginner&shape=beginner/&positions-2=on&extensions-NONE=on&shifts-NONE=on")
            .body();
    assertThat(shaped).contains("value=\"Anna-Lena K.\"", "name=\"patterns-SECOND_THIRD\" checked");
    assertThat(folder.resolve("students")).doesNotExist();

    HttpResponse<String> answer =
        made(
            "Anna-Lena K.",
            "instrument=viola&level=beginner&positions-2=on&patterns-SECOND_THIRD=on&shifts-NONE=on");

    assertThat(answer.body()).contains("Saved: " + file("Anna-Lena K..yaml"));
    assertThat(file("Anna-Lena K..yaml"))
        .hasContent(
            "preset: beginner\ninstrument: viola\npositions: [1]\npatterns: [2-3]\nshifts: none");
    assertThat(answer.headers().firstValue("HX-Replace-Url")).contains(address());
    assertThat(visitor.get("/students").body())
        .contains(">Anna-Lena K.</a>", "viola; beginner; 1st position; finger patterns 2-3");
  }

  @Test
  void whatIsWrongIsSaidBesideItsFieldAndWhatWasTypedStays() throws Exception {
    String answer =
        made("", "instrument=viola&level=beginner&size=9/9&reach=104&shifts-SLUR=on").body();

    assertThat(answer)
        .contains("id=\"e-name\">Write a name")
        .contains("id=\"e-size\">No size '9/9' of the viola")
        .contains("value=\"9/9\"", "value=\"104\"", "name=\"shifts-SLUR\" checked")
        .contains("Nothing is saved yet")
        .doesNotContain("Saved:");
    assertThat(folder.resolve("students")).doesNotExist();
  }

  @ParameterizedTest
  @ValueSource(strings = {"../imke", "a/b", "a\\b", ".hidden", "imke.yaml", "a\nb", "<b>", "C:x"})
  void nameThatIsNoFileNameIsRefused(String name) throws Exception {
    assertThat(made(name, "instrument=viola").body()).contains("id=\"e-name\">Write a name");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void nameOfAnotherFileIsRefused() throws Exception {
    written("imke.yaml", "shopping: milk\n");
    assertThat(made("Imke", "instrument=viola").body()).contains("of this name already");
    assertThat(file("imke.yaml")).hasContent("shopping: milk");
    assertThat(names()).containsExactly("imke.yaml");
  }

  @Test
  void changeKeepsRemarksAndWhatTheFileSaidBefore() throws Exception {
    written("imke.yaml", IMKE);
    String address = address();
    assertThat(visitor.get(address).body())
        .contains("Student: Imke", "name=\"positions-2\" checked");

    String answer =
        visitor
            .post(
                address,
                "seen=" + seen(address) + "&instrument=viola&positions-2=on&positions-6=on")
            .body();

    assertThat(answer).contains("Saved: ", "is kept in imke.yaml.2026-12-01~");
    assertThat(file("imke.yaml")).hasContent(IMKE.replace("1 # so", "[1, 3]  # so"));
    assertThat(file("imke.yaml.2026-12-01~")).hasContent(IMKE);
    assertThat(
            visitor
                .post(
                    address,
                    "seen=" + seen(address) + "&instrument=viola&positions-2=on&positions-6=on")
                .body())
        .contains("Nothing to save");
  }

  @Test
  void studentChangedElsewhereIsNotReplacedUnseen() throws Exception {
    Path file = written("imke.yaml", IMKE);
    String address = address();
    String seen = seen(address);
    Files.writeString(file, "instrument: viola\npositions: 2\n");

    String answer =
        visitor.post(address, "seen=" + seen + "&instrument=viola&positions-8=on").body();

    assertThat(answer)
        .contains("Imke was changed in another window", "name=\"positions-8\" checked");
    assertThat(file).hasContent("instrument: viola\npositions: 2");
    String again = found(SEEN, answer, 1);
    assertThat(visitor.post(address, "seen=" + again + "&instrument=viola&positions-8=on").body())
        .contains("Saved: ");
    assertThat(file).hasContent("instrument: viola\npositions: [4]");
  }

  @Test
  void fileThatIsNoPlayerIsNamedAndNeverOpened() throws Exception {
    written("imke.yaml", "positions: fist\n");
    written("notes.txt", "hello");
    written(".hidden.yaml", IMKE);

    assertThat(visitor.get("/students").body())
        .contains("imke.yaml, line 1: 'fist' is not a position")
        .doesNotContain("notes", "hidden", folder + "/students/imke");
  }

  @Test
  void linkOutOfTheFolderIsNotFollowed(@TempDir Path outside) throws Exception {
    Path secret = Files.writeString(outside.resolve("secret.yaml"), IMKE);
    Files.createDirectories(folder.resolve("students"));
    Files.createSymbolicLink(file("link.yaml"), secret);

    assertThat(visitor.get("/students").body())
        .contains("link.yaml is a link that leads out of the folder")
        .doesNotContain("fifth");
  }

  @Test
  void nothingIsWrittenThroughALinkOutOfTheFolder(@TempDir Path outside) throws Exception {
    Files.createSymbolicLink(folder.resolve("students"), outside);

    assertThat(made("Imke", "instrument=viola").body()).contains("leads out of the folder");
    assertThat(outside).isEmptyDirectory();
  }

  @Test
  void unknownStudentLeadsNowhere() throws Exception {
    String path = "/students/aaaaaaaaaaaaaaaaaaaaaaaa";
    assertThat(visitor.get(path).statusCode()).isEqualTo(404);
    assertThat(visitor.post(path, "seen=").statusCode()).isEqualTo(404);
    assertThat(visitor.get("/students/imke").statusCode()).isEqualTo(404);
  }

  @Test
  void menuNamesTheStudentOfALesson() throws Exception {
    written("imke.yaml", IMKE);
    StudentsFolder students = new StudentsFolder(folder, name -> name);
    StudentsFolder.Entry imke = students.list().students().get(0);
    for (String name : List.of("imke", "students/imke.yaml")) {
      Path lesson =
          Files.writeString(folder.resolve("mill.yaml"), "score: a.xml\nstudent: " + name);
      StoredLesson stored = StoredLesson.read(lesson);
      assertThat(imke.name()).isEqualTo("Imke");
      assertThat(imke.nameIn(stored)).isEqualTo("imke");
      assertThat(students.of(stored)).contains(imke);
    }
    Path lesson = Files.writeString(folder.resolve("mill.yaml"), "score: a.xml\nstudent: jonte");
    assertThat(students.of(StoredLesson.read(lesson))).isEmpty();
  }
}
