package fingering.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.cli.command.ExitCode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Likely mistakes of newcomers are answered with one sentence that names the next step. */
class MistakesTest {
  private static final int MAX_LENGTH = 420;

  @TempDir static Path folder;

  private static ImmutableMap<String, Path> files;

  @BeforeAll
  static void files() throws IOException {
    Path examples = Path.of("..", "docs", "examples");
    files =
        ImmutableMap.<String, Path>builder()
            .put("DEMO", Session.DEMO)
            .put("MARCH", examples.resolve("lanterns.musicxml"))
            .put("TUNES", examples.resolve("ferry.abc"))
            .put("FOLDER", Files.createDirectory(folder.resolve("bare")))
            .put("NONE", folder.resolve("none.musicxml"))
            .put("BARRED", folder.resolve("nowhere").resolve("new.txt"))
            .put("THERE", Files.writeString(folder.resolve("there.txt"), "mine"))
            .put("NOTES", Files.writeString(folder.resolve("notes.txt"), "ask for the bowings"))
            .put("PDF", Files.writeString(folder.resolve("part.pdf"), "%PDF-1.7\n1 0 obj\n"))
            .put("EMPTY", Files.createFile(folder.resolve("empty.musicxml")))
            .put("ARCHIVE", archive(folder.resolve("own.zip")))
            .put("OLD", text("old.yaml", "positions = 1\n"))
            .put("BARE", text("bare.yaml", "# nothing yet\n"))
            .put("TABBED", text("tabbed.yaml", "positions:\n\t- 1\n"))
            .put("TWICE", text("twice.yaml", "hand: small\nhand: large\n"))
            .put("LOUD", text("loud.yaml", "loud: 3\n"))
            .put("PUPIL", latin("pupil.yaml", "# Sch\u00fclerin\npositions: 1\n"))
            .buildOrThrow();
  }

  private static Path text(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static Path latin(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text, ISO_8859_1);
  }

  /** A zip archive without MusicXML, like the native formats of some programs. */
  private static Path archive(Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("score.bin"));
      zip.write(7);
      zip.closeEntry();
    }
    return file;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // Commands
        "                                     | such as 'fingering demo'",
        "plna DEMO                            | did you mean 'plan'?",
        "fingering plan DEMO                  | choose one of open, demo, compare, plan",
        "help plan                            | 'fingering plan --help'",
        "DEMO                                 | put one before the file, such as",
        "part.musicxml                        | 'fingering compare part.musicxml'",
        "--part Viola compare DEMO            | put the command before its options",
        "-v                                   | did you mean -V?",
        "journal                              | journal add, journal show",
        "journal ad                           | did you mean 'add'?",
        "pln --help                           | did you mean 'plan'?",
        "nosuch --help                        | there is no command 'fingering nosuch'",
        "nosuch --version                     | there is no command 'fingering nosuch'",
        "--help nosuch                        | there is no command 'fingering nosuch'",
        "--version pln                        | did you mean 'plan'?",
        "help nosuch                          | there is no command 'help'",
        "journal ad --help                    | did you mean 'add'?",
        "journal --help ad                    | did you mean 'add'?",
        "man pln                              | did you mean 'plan'?",
        // Options
        "compare DEMO --best 2                | --best is an option of 'plan', not of 'compare'",
        "compare DEMO --mesures 1-4           | did you mean --measures?",
        "compare DEMO -part Viola             | did you mean --part?",
        "compare DEMO --loud                  | 'compare' has no option --loud",
        "compare DEMO --measure 1-4           | did you mean --measures?",
        "compare DEMO --tempo                 | --tempo needs a tempo after it, such as quarter=96",
        "compare DEMO --tempo half=8 --tempo half=9 | --tempo is given twice",
        "compare DEMO part two.musicxml       | 'part' is one word too many",
        "practice DEMO                        | give --to MARK and --by DATE too, such as --to quarter=96 --by",
        "practice DEMO --to quarter=96        | give --by DATE too, such as --by 2026-12-12",
        "practice DEMO --to quarter=96 --by   | --by needs a date after it, such as 2026-12-12",
        "practice DEMO --metronome            | --metronome needs one of exact, traditional after it",
        "plan DEMO --write                    | the name of a new file after it, such as marked.musicxml",
        "plan DEMO --show third               | write 3=8 for eight notes in 3rd",
        "plan DEMO --choose 4                 | with the demand 'show 4=8', eight notes in 4th",
        "plan DEMO --choices 99               | no measure 99 in Viola, which has measures 0 to 32",
        "plan DEMO --choices 9-2              | ends at measure 2, before it begins; give the lower",
        "chart viola --position 40            | the highest numbered position on the viola is 14th",
        "chart cello --position 40            | the highest numbered position on the cello is 7th",
        "chart                                | give the INSTRUMENT: violin, viola, cello or bass",
        "plan DEMO --best few                 | --best: 'few' is not a whole number",
        "plan DEMO --format docx              | 'docx' is not one of text, json, html, svg",
        // Music
        "compare                              | such as docs/demo/demo.musicxml",
        "compare demo                         | 'fingering demo' compares it",
        "check                                | such as docs/examples",
        "compare NONE                         | check the name and the folder",
        "compare FOLDER                       | name the score file inside it",
        "compare PDF                          | export the score as MusicXML",
        "compare ARCHIVE                      | export the score as MusicXML",
        "compare NOTES                        | export the score as MusicXML",
        "compare EMPTY                        | is empty: export the score again",
        "compare MARCH                        | choose one: 1 Flute",
        "compare MARCH --part Bratsche        | choose one: 1 Flute",
        "compare TUNES                        | --tune",
        "compare DEMO --measures 40           | it has measures 0 to 32",
        "compare DEMO --measures ''           | it has measures 0 to 32",
        "compare DEMO --measures 20-17        | name the earlier place first",
        "compare DEMO --tempo quarter:96      | write a note value and a number",
        "compare DEMO --tempo crotchet=96     | write half, quarter",
        "compare DEMO --tempo quarter=fast    | write a note value and a number",
        "compare DEMO --instrument oud        | no instrument 'oud'",
        // Files that are written
        "plan DEMO --write DEMO               | choose another name",
        "plan DEMO --write BARRED             | use a name that ends in .mxl",
        "plan DEMO --output BARRED            | make it first, or choose another",
        "plan DEMO --output THERE             | give --output a new name",
        "plan DEMO --output ''                | --output: the name is empty; name a file",
        "plan DEMO --weights ''               | --weights: the name is empty; name a file",
        "plan ''                              | SCORE: the name is empty; name a file",
        "check ''                             | name a file or a folder",
        "audition DEMO --write -              | only --output takes it, for the terminal",
        "plan -                               | only --output takes it, for the terminal",
        // Demands, students, levels
        "plan DEMO --allow fist               | write half, 1, 2½, 3 and so on (3rd, III and third too)",
        "plan DEMO --choose fist              | write first (or 1), third (3), partly, second (2), or free",
        "plan DEMO --choose 5                 | choose first, third (it stays in 3rd)",
        "plan DEMO --fix 12.3                 | 12.3=III/4",
        "plan DEMO --preset novice            | choose one of common-practice",
        "plan DEMO --player PUPIL             | save it again in that encoding",
        "plan DEMO --player NONE              | check the name and the folder",
        "check FOLDER                         | must end in .musicxml",
        "check MARCH --level novice           | or name a file of your own",
        "check MARCH --level beginer          | did you mean 'beginner'?",
        "plan DEMO --preset advnced           | did you mean 'advanced'?",
        "plan DEMO --instrument celo          | did you mean 'cello'?",
        "plan DEMO --tuning five-strings      | did you mean 'five-string'?",
        "plan DEMO --avoid open-string        | did you mean 'open-strings'?",
        "plan DEMO --limit mesures=9          | did you mean 'measures'?",
        "scale D major --instrument viola --pattern thrids   | did you mean 'thirds'?",
        "learn DEMO                           | finger more notes",
        "practice DEMO --to quarter=96 --by 12.12.2026 | such as 2026-12-12",
        "practice DEMO --to quarter=96 --by 2026-12-12 | give one, or add it to the journal. Use --from.",
        "audition DEMO                        | an audition sheet consists of keys with values",
        "plan DEMO --player OLD               | write a colon after the key, 'positions: ', instead of '='",
        "plan DEMO --player BARE              | the file is empty; write keys and values into it",
        "plan DEMO --player TABBED            | a tab is used for the indentation; use spaces",
        "plan DEMO --player TWICE             | 'hand' is given twice, first in line 1; write it once",
        "plan DEMO --weights LOUD             | there is no key 'loud' in a weights file; correct or remove it",
        "journal add                          | give --clean, --note or both",
        "chart violin --key D                 | write tonic and mode",
        "scale D --instrument violin          | write tonic and kind",
        "scale D major                        | name it with --instrument"
      })
  void oneSentenceNamesTheNextStep(String typed, String says) {
    ImmutableList.Builder<Object> words = ImmutableList.builder();
    if (typed != null) {
      for (String word : typed.strip().split(" ", -1)) {
        words.add(word.equals("''") ? "" : files.getOrDefault(word, Path.of(word)));
      }
    }

    Session session = Session.of(words.build().toArray()).refused(ExitCode.REFUSED);

    assertThat(session.err()).contains(says).hasSizeLessThan(MAX_LENGTH);
    // A sentence, or a question such as "did you mean 'beginner'?"
    assertThat(session.err().strip()).matches("(?s).*[.?]");
    assertThat(folder.resolve("nowhere")).doesNotExist();
    assertThat(folder.resolve("there.txt")).hasContent("mine");
  }
}
