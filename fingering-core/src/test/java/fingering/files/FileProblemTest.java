package fingering.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FileProblemTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve("part.xml");
  }

  private static IOException because(String reason) {
    return new FileSystemException("part.xml", null, reason);
  }

  private static Stream<IOException> causes() {
    return Stream.of(
        new IOException(),
        new IOException("part.xml"),
        new NoSuchFileException("part.xml"),
        new AccessDeniedException("part.xml"),
        new DirectoryNotEmptyException("part.xml"),
        new FileSystemLoopException("part.xml"),
        because("Too many levels of symbolic links or unable to access attributes"));
  }

  @ParameterizedTest
  @MethodSource("causes")
  void everyCauseIsOneSentenceWithoutWordsOfJava(IOException cause) {
    for (String sentence :
        List.of(
            FileProblem.reading(file(), cause),
            FileProblem.writing(file(), cause),
            FileProblem.printing(cause))) {
      assertThat(sentence)
          .endsWith(".")
          .contains(": ")
          .doesNotContain("Exception", "null", "java")
          .hasLineCount(1);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Too many levels of symbolic links, a link that leads back to itself",
    "File name too long, There is no file",
    "Not a directory, There is no file",
    "Input/output error, could not be read from its disk"
  })
  void theReasonForReadingDecidesTheAdvice(String reason, String says) {
    assertThat(FileProblem.reading(file(), because(reason))).contains(says);
  }

  @ParameterizedTest
  @CsvSource({
    "No space left on device, because the disk is full",
    "Disk quota exceeded, because the disk is full",
    "There is not enough space on the disk, because the disk is full",
    "Read-only file system, its disk is read-only",
    "File name too long, choose a shorter one",
    "Too many levels of symbolic links, a link that leads back to itself",
    "Input/output error, could not be written"
  })
  void theReasonForWritingDecidesTheAdvice(String reason, String says) {
    assertThat(FileProblem.writing(file(), because(reason))).contains(says);
    assertThat(FileProblem.writing(file(), new IOException(reason))).contains(says);
  }

  @Test
  void aMissingFolderIsNamed() {
    assertThat(FileProblem.writing(folder.resolve("none").resolve("x"), new IOException()))
        .contains("there is no folder " + folder.resolve("none"));
  }

  @Test
  void theNameOfAFileIsNoReason() {
    IOException cause = new FileSystemException("no space left", null, "Input/output error");

    assertThat(FileProblem.printing(cause)).doesNotContain("full");
  }

  @Test
  void aNameThatTheLanguageSettingLacksSaysWhatToDo() {
    for (String name : List.of("Bräutigam.xml", "Br\uFFFD\uFFFDutigam.xml")) {
      assertThat(FileNames.fault(name, StandardCharsets.US_ASCII))
          .contains(name, "run the command with LC_ALL=C.UTF-8");
    }
    assertThat(FileNames.fault("a\0b", StandardCharsets.UTF_8)).endsWith("is not a file name");
  }
}
