package fingering.cli;

import static fingering.cli.Session.DEMO;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file that cannot be written is reported in one sentence, and no part of it is left. */
final class RefusedWritingTest {
  private static final String SHELL = "/bin/sh";

  @TempDir Path folder;

  private String refused(Path target) {
    return Session.of("plan", DEMO, "--write", target).refused(2).err();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aFolderIsNotOverwritten() throws IOException {
    Path target = Files.createDirectory(folder.resolve("copy.musicxml"));

    assertThat(refused(target)).contains("copy.musicxml already exists");
    Path text = Files.createDirectory(folder.resolve("plans.txt"));
    assertThat(Session.of("compare", DEMO, "--output", text).refused(2).err())
        .contains("exists already");
    assertThat(names()).containsExactly("copy.musicxml", "plans.txt");
    assertThat(target).isEmptyDirectory();
    assertThat(text).isEmptyDirectory();
  }

  @Test
  void theScoreItselfIsNotOverwrittenUnderAnyName() throws IOException {
    Path score = Files.copy(DEMO, folder.resolve("part.musicxml"));
    Path hard = Files.createLink(folder.resolve("hard.musicxml"), score);
    Path soft = Files.createSymbolicLink(folder.resolve("soft.musicxml"), score);
    Path around = folder.resolve("..").resolve(folder.getFileName()).resolve("part.musicxml");

    for (Path target : List.of(score, hard, soft, around)) {
      assertThat(Session.of("plan", score, "--write", target).refused(2).err())
          .contains("is the score that was read and is never overwritten");
    }
    assertThat(score).hasSameBinaryContentAs(DEMO);
    assertThat(names()).containsExactly("hard.musicxml", "part.musicxml", "soft.musicxml");
  }

  @Test
  void aBrokenLinkIsNotFollowed() throws IOException {
    Path link = folder.resolve("link.musicxml");
    Files.createSymbolicLink(link, folder.resolve("elsewhere.musicxml"));

    assertThat(refused(link)).contains("already exists");
    Path text = folder.resolve("link.txt");
    Files.createSymbolicLink(text, folder.resolve("elsewhere.txt"));
    assertThat(Session.of("compare", DEMO, "--output", text).refused(2).err())
        .contains("exists already");
    assertThat(names()).containsExactly("link.musicxml", "link.txt");
  }

  @ParameterizedTest
  @CsvSource({"none/copy.musicxml, there is no folder", "file/copy.musicxml, there is no folder"})
  void aMissingFolderIsReported(String target, String says) throws IOException {
    Files.writeString(folder.resolve("file"), "no folder");

    assertThat(refused(folder.resolve(target))).contains(says);
    assertThat(names()).containsExactly("file");
  }

  @Test
  void aFileNameThatIsTooLongIsRefused() throws IOException {
    assertThat(refused(folder.resolve("n".repeat(300) + ".musicxml")))
        .contains("its name is too long: choose a shorter one");
    assertThat(names()).isEmpty();
  }

  @Test
  void theLongestFileNameIsWritten() throws IOException {
    String name = "n".repeat(240) + ".musicxml";

    Session.of("plan", DEMO, "--write", folder.resolve(name)).succeeded();

    assertThat(names()).containsExactly(name);
  }

  @Test
  void aFolderWithoutPermissionIsReported() throws IOException {
    assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Path closed = Files.createDirectory(folder.resolve("closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      // Root can write everywhere.
      assumeTrue(!Files.isWritable(closed));
      assertThat(refused(closed.resolve("copy.musicxml"))).contains("You are not allowed to write");
      assertThat(Session.of("compare", DEMO, "--output", closed.resolve("x")).refused(2).err())
          .contains("You are not allowed to write");
      assertThat(closed).isEmptyDirectory();
    } finally {
      Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  // POSIX: ulimit -f limits the size of files, in blocks of 512 bytes; writing fails as on a full
  // disk.
  @ParameterizedTest
  @CsvSource({
    "plan, --write, copy.musicxml, 'the disk is not full'",
    "plan, --write, copy.mxl, 'the disk is not full'",
    "compare, --output, plans.txt, 'the disk is not full'"
  })
  void aFullDiskLeavesNoPartOfAFile(String command, String option, String name, String says)
      throws IOException, InterruptedException {
    Session session =
        runInNewJava("ulimit -f 2", "-Xmx512m", command, DEMO, option, folder.resolve(name));

    assertThat(session.refused(2).err()).contains(says);
    assertThat(names()).isEmpty();
  }

  @Test
  void aFullDiskLeavesNoJournalAndChangesNone() throws IOException, InterruptedException {
    Path journal = folder.resolve("practice.journal");
    Object[] add = {"journal", "add", "--note", "n".repeat(600), "--journal", journal};

    assertThat(runInNewJava("ulimit -f 0", "-Xmx512m", add).refused(2).err())
        .contains("the disk is not full");
    assertThat(names()).isEmpty();

    Session.of(add).succeeded();
    String before = Files.readString(journal);
    runInNewJava("ulimit -f 2", "-Xmx512m", add).refused(2);
    assertThat(journal).hasContent(before);
  }

  @Test
  void aScoreTooLargeForTheMemoryLeavesNoFile() throws IOException, InterruptedException {
    String[] notes = new String[100_000];
    Arrays.fill(notes, "D5");
    Path score = TinyScore.titled("Long").part("Viola", notes).in(folder);

    Session session =
        runInNewJava("true", "-Xmx20m", "plan", score, "--write", folder.resolve("copy.mxl"));

    assertThat(session.refused(2).err()).contains("more memory than Java may use");
    assertThat(names()).containsExactly(score.getFileName().toString());
  }

  private static Session runInNewJava(String before, String memory, Object... arguments)
      throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of(SHELL)));
    List<String> command =
        new ArrayList<>(
            List.of(
                SHELL,
                "-c",
                before + " && exec \"$@\"",
                "sh",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:-UsePerfData",
                memory,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    Stream.of(arguments).map(Object::toString).forEach(command::add);
    Process process = new ProcessBuilder(command).start();
    String out = new String(process.getInputStream().readAllBytes(), UTF_8);
    String err = new String(process.getErrorStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Session(process.exitValue(), out, err);
  }
}
