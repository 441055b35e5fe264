package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lessons are read, saved and changed by the commands, and typed options override them. */
final class LessonTest {
  @TempDir Path folder;

  @BeforeEach
  void copy() throws IOException {
    MillFolder.fill(folder);
  }

  private Path file(String name) {
    return folder.resolve(name);
  }

  private Path lesson(String text) throws IOException {
    return Files.writeString(file("lesson.yaml"), text);
  }

  /** The output of a command with the words for a lesson. */
  private static String out(Object... words) {
    return Session.of(words).succeeded().out();
  }

  @Test
  void whatWasTypedIsSavedAndReadBack() throws IOException {
    Path lesson = file("imke-mill.yaml");
    Object[] typed = {
      "plan",
      file("mill.musicxml"),
      "--part",
      "Viola",
      "--measures",
      "1-3",
      "--tempo",
      "quarter=72",
      "--player",
      file("students/imke.yaml"),
      "--stay",
      "3@1-2",
      "--fix",
      "3.1=II/2"
    };
    List<Object> saving = new ArrayList<>(List.of(typed));
    saving.addAll(List.of("--save-lesson", lesson));
    String printed = Session.of(typed).succeeded().answer();

    Session saved = Session.of(saving.toArray()).succeeded();

    assertThat(saved.answer()).isEqualTo(printed);
    assertThat(saved.written()).containsExactly(lesson);
    assertThat(lesson)
        .hasContent(
            """
            score: mill.musicxml
            part: Viola
            measures: 1-3
            tempo: quarter = 72
            student: imke
            plans:
              - name: mine
                stay: 3@1-2
                fix: 3.1=II/2
            """);
    List<Object> asJson = new ArrayList<>(List.of(typed));
    asJson.addAll(List.of("--format", "json"));
    assertThat(Session.of("plan", "--lesson", lesson, "--format", "json").json().get("notes"))
        .isEqualTo(Session.of(asJson.toArray()).json().get("notes"));
    assertThat(out("plan", "--lesson", lesson)).contains("Demands on 'mine'");
  }

  @Test
  void typedOptionsOverrideTheLesson() throws IOException {
    Path lesson =
        lesson(
            """
            score: mill.musicxml
            measures: 1-3
            tempo: quarter = 72
            student: imke
            plans:
              - choose: third
                fix: 2.1=IV/2
            """);

    assertThat(out("plan", "--lesson", lesson)).contains("m. 1–3", "quarter = 72", "imke");
    assertThat(out("plan", "--lesson", lesson, "--measures", "1-2", "--tempo", "50"))
        .contains("m. 1–2", "quarter = 50");
    assertThat(out("plan", "--lesson", lesson, "--player", file("students/jonte.yaml")))
        .contains("jonte")
        .doesNotContain("imke");
    assertThat(out("plan", "--lesson", lesson, "--choose", "first"))
        .contains("1st position")
        .doesNotContain("3rd position", "Demands on");
    assertThat(out("plan", "--lesson", lesson, "--fix", "1.1=III/0"))
        .contains("3rd position", "play the note at 1.1 on string III, open");
    assertThat(out("plan", DEMO, "--lesson", lesson, "--measures", "17-19", "--choose", "first"))
        .contains("Lanterns on the Millrace");
    assertThat(out("marks", "--lesson", lesson)).contains("Rain on the Mill");
    assertThat(Session.of("check", "--lesson", lesson).out()).contains("mill.musicxml");
    assertThat(Session.of("check", "--lesson", lesson, "--level", "beginner").complaints())
        .isEmpty();
  }

  @Test
  void changedSlursCountInEveryCommand() throws IOException {
    String music = "score: mill.musicxml\ntempo: quarter = 30\nstudent: imke\n";
    Path lesson = lesson(music + "slurs: {1.1: 4.1}\n");
    Path plain = Files.writeString(file("plain.yaml"), music);
    Path marked = file("marked.musicxml");
    String score = Files.readString(file("mill.musicxml"));

    String planned = out("plan", "--lesson", lesson, "--costs", "--write", marked);
    assertThat(file("mill.musicxml")).hasContent(score);
    assertThat(Files.readString(marked).split("<slur ", -1)).hasSize(3);

    // The same score with the slurs printed costs the same.
    Files.writeString(
        file("printed.musicxml"),
        Files.readString(marked).replaceAll("<(fingering|string|words)[^>]*>[^<]*</\\1>", ""));
    Path printed = Files.writeString(file("printed.yaml"), music.replace("mill", "printed"));
    assertThat(total(planned)).isEqualTo(total(out("plan", "--lesson", printed, "--costs")));
    assertThat(total(planned)).isNotEqualTo(total(out("plan", "--lesson", plain, "--costs")));

    assertThat(Session.of("check", "--lesson", lesson).out()).contains("one bow");
    assertThat(Session.of("check", "--lesson", plain).out()).doesNotContain("one bow");
    assertThat(out("plan", "--lesson", lesson, "--format", "svg")).contains("class=\"curve\"");
    assertThat(out("plan", "--lesson", plain, "--format", "svg")).doesNotContain("class=\"curve\"");
  }

  private static String total(String plan) {
    return plan.lines().filter(line -> line.strip().startsWith("Total")).findFirst().orElseThrow();
  }

  @Test
  void changedSlursStayInASavedLessonOnTheSameMusic() throws IOException {
    Path lesson = lesson("score: mill.musicxml\npart: Viola\nslurs: {1.1: 1.2}\n");
    Path copy = file("copy.yaml");

    Session.of("plan", "--lesson", lesson, "--tempo", "60", "--part", "1", "--save-lesson", copy)
        .succeeded();
    assertThat(copy).content().contains("part: 1", "slurs: {1.1: 1.2}");
    Session.of("plan", DEMO, "--lesson", lesson, "--save-lesson", copy).succeeded();
    assertThat(copy).content().contains("demo.musicxml").doesNotContain("slurs:");
  }

  @Test
  void slurThatDoesNotFitIsRefused() throws IOException {
    assertThat(
            Session.of("plan", "--lesson", lesson("score: mill.musicxml\nslurs: {1.2: 1.1}\n"))
                .refused(2)
                .err())
        .contains("lesson.yaml, line 2: the slur from 1.2 to 1.1 does not end after it begins");
    assertThat(
            Session.of("plan", "--lesson", lesson("score: mill.musicxml\nslurs: {1.1: 9.1}\n"))
                .refused(2)
                .err())
        .contains("In 'slurs', at 9.1: No note begins in measure 9");
  }

  @Test
  void aChoiceMadeInOneCommandReachesTheOthers() throws IOException {
    Path lesson = lesson("score: mill.musicxml\nstudent: imke # always\n");

    Session.of("compare", "--lesson", lesson, "--choose", "third", "--save-lesson", lesson)
        .succeeded();
    assertThat(out("plan", "--lesson", lesson)).contains("3rd position");
    Session.of("plan", "--lesson", lesson, "--fix", "3.1=III/4", "--save-lesson", lesson)
        .succeeded();
    Session.of("plan", "--lesson", lesson, "--fix", "4.1=II/1", "--save-lesson", lesson)
        .succeeded();
    Session.of("plan", "--lesson", lesson, "--fix", "4.1=II/3", "--save-lesson", lesson)
        .succeeded();
    Session.of(
            "practice",
            "--lesson",
            lesson,
            "--from",
            "60",
            "--to",
            "quarter=70",
            "--by",
            "2030-12-12",
            "--today",
            "2030-12-01",
            "--journal",
            file("mill.journal"),
            "--save-lesson",
            lesson)
        .succeeded();

    assertThat(lesson)
        .hasContent(
            """
            score: mill.musicxml
            student: imke # always
            plans:
              - name: third
                choose: third
                fix: [3.1=III/4, 4.1=II/3]
            hearing: {date: 2030-12-12, tempo: quarter = 70}
            journal: mill.journal
            """);
    assertThat(Session.of("practice", "--lesson", lesson, "--today", "2030-12-01").err())
        .contains("There is no clean tempo to start from");
    out("journal", "add", "--lesson", lesson, "--clean", "quarter=66");
    assertThat(out("practice", "--lesson", lesson, "--today", "2030-12-01"))
        .contains("3rd position: from quarter = 66 to quarter = 70 by Thursday 12 December");
    assertThat(out("journal", "show", "--lesson", lesson)).contains("quarter = 66");
    assertThat(out("lesson", "list", folder))
        .contains("lesson  imke     mill   –     all       third  2030-12-12  quarter = 66");
    assertThat(out("lesson", "show", lesson)).contains("choose: third", "students/imke.yaml");
  }

  @Test
  void anotherChoiceComesFirstAndKeepsTheOthers() throws IOException {
    Path lesson = lesson("score: mill.musicxml\nplans: [{name: mine, stay: 3@1-2}]\n");

    Session.of("compare", "--lesson", lesson, "--choose", "first", "--save-lesson", lesson)
        .succeeded();
    assertThat(lesson).content().contains("  - name: first\n", "  - name: mine\n    stay: 3@1-2");
    Session.of("compare", "--lesson", lesson, "--choose", "mine", "--save-lesson", lesson)
        .succeeded();
    assertThat(lesson)
        .content()
        .endsWith("plans:\n  - name: mine\n    stay: 3@1-2\n  - name: first\n    choose: first\n");
    assertThat(out("compare", "--lesson", lesson)).contains("mine");
  }

  @Test
  void plansOfOnesOwnAreSavedTheChosenOneFirst() throws IOException {
    Path lesson = file("new.yaml");
    Session.of(
            "compare",
            file("mill.musicxml"),
            "--plan",
            "low=allow 1",
            "--plan",
            "up=stay 3@1-2; avoid extensions",
            "--choose",
            "up",
            "--save-lesson",
            lesson)
        .succeeded();

    assertThat(lesson)
        .hasContent(
            """
            score: mill.musicxml
            plans:
              - name: up
                avoid: extensions
                stay: 3@1-2
              - name: low
                allow: 1
            """);
  }

  @Test
  void anEarlierPlanIsFoundFromTheFolderOfTheLesson() throws IOException {
    Path plan = file("students/plan.json");
    Session.of("plan", file("mill.musicxml"), "--choose", "third", "--output", plan).succeeded();
    Path lesson = file("keep.yaml");
    Session.of("plan", file("mill.musicxml"), "--keep-plan", plan + "@1-2", "--save-lesson", lesson)
        .succeeded();

    assertThat(lesson).content().contains("keep-plan: students/plan.json@1-2");
    String kept = out("plan", "--lesson", lesson, "--format", "json");
    Path moved = file("students/keep.yaml");
    Session.of("plan", "--lesson", lesson, "--save-lesson", moved).succeeded();
    assertThat(moved).content().contains("score: ../mill.musicxml", "keep-plan: plan.json@1-2");
    assertThat(out("plan", "--lesson", moved, "--format", "json")).isEqualTo(kept);
  }

  @Test
  void whatALessonDoesNotHoldIsNamed() {
    Session session =
        Session.of(
            "plan",
            file("mill.musicxml"),
            "--hand",
            "small",
            "--preset",
            "beginner",
            "--save-lesson",
            file("new.yaml"));
    assertThat(session.complaints())
        .singleElement()
        .asString()
        .contains("A lesson does not hold --hand, --preset");
  }

  @Test
  void lostRemarksAreNamedAndKeptInTheCopy() throws IOException {
    Path lesson = lesson("score: mill.musicxml\nplans:\n  - choose: first # for now\n");
    Session session =
        Session.of("plan", "--lesson", lesson, "--choose", "third", "--save-lesson", lesson);

    assertThat(session.complaints())
        .containsExactly("Note: These remarks are no longer in it: # for now");
    Path copy = session.written().get(1);
    assertThat(copy.toString()).startsWith(lesson + ".").endsWith("~");
    assertThat(copy).content().contains("# for now");
  }

  @Test
  void aFileThatIsNoLessonIsNotReplaced() throws IOException {
    Path shopping = Files.writeString(file("shopping.yaml"), "milk: 2\n");
    Path mill = file("mill.musicxml");

    assertThat(Session.of("plan", mill, "--save-lesson", shopping).refused(2).err())
        .contains("is not a lesson", "is not replaced: choose another name");
    Session.of("plan", mill, "--save-lesson", file("students/imke.yaml")).refused(2);
    Session.of("plan", mill, "--save-lesson", mill).refused(2);
    assertThat(shopping).hasContent("milk: 2");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(Path::getFileName).map(Path::toString))
          .containsExactlyInAnyOrder("shopping.yaml", "mill.musicxml", "students");
    }
  }

  @Test
  void mistakesAreAnsweredInOneSentence() throws IOException {
    Path bare = lesson("score: mill.musicxml\n");
    Path mill = file("mill.musicxml");
    Path fresh = file("fresh.yaml");

    assertThat(Session.of("practice", "--lesson", bare).refused(2).err())
        .contains("give --to MARK and --by DATE too");
    assertThat(Session.of("journal", "show", "--lesson", bare).refused(2).err())
        .contains("names no journal: add a line such as 'journal: lesson.journal'");
    assertThat(Session.of("compare", mill, "--choose", "third").refused(2).err())
        .contains("give --save-lesson too");
    assertThat(
            Session.of("compare", mill, "--choose", "best", "--save-lesson", fresh)
                .refused(2)
                .err())
        .contains("'best' is not a plan");
    assertThat(
            Session.of("compare", mill, "--choose", "5", "--save-lesson", fresh).refused(2).err())
        .contains("'5' is not a plan for a lesson");
    assertThat(Session.of("plan", "--abc", "K:C\nG", "--save-lesson", fresh).code()).isEqualTo(2);
    assertThat(
            Session.of(
                    "plan",
                    mill,
                    "--player",
                    file("students/imke.yaml"),
                    "--player",
                    file("students/jonte.yaml"),
                    "--save-lesson",
                    fresh)
                .err())
        .contains("A lesson has one student");
    assertThat(Session.of("plan", mill, "--save-lesson", file("no/x.yaml")).refused(2).err())
        .contains("there is no folder");
    assertThat(Session.of("lesson").refused(2).err()).contains("lesson list, lesson show");
    Path lost = lesson("score: mill.musicxml\nstudent: ole\n");
    assertThat(Session.of("plan", "--lesson", lost).refused(2).err())
        .contains("names the student ole, but there is no player file", "students/ole.yaml");
    assertThat(fresh).doesNotExist();
  }
}
