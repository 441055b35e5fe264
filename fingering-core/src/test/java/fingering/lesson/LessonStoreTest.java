package fingering.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.common.collect.ImmutableList;
import fingering.lesson.LessonStore.Saved;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LessonStoreTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
  private static final Lesson FIRST = Lesson.of("a.xml");
  private static final Lesson SECOND = FIRST.withPart(Optional.of("Viola"));
  private static final Lesson THIRD = FIRST.withPart(Optional.of("Cello"));

  @TempDir Path folder;

  private Path lesson() {
    return folder.resolve("mill.yaml");
  }

  private static Saved saved(Path file, Lesson lesson, LocalDate day) {
    return LessonStore.save(file, lesson, Optional.empty(), day);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theTextBeforeTheFirstChangeOfADayIsKept() throws IOException {
    saved(lesson(), FIRST, DAY);
    assertThat(saved(lesson(), SECOND, DAY).copy())
        .contains(folder.resolve("mill.yaml.2026-12-01~"));
    assertThat(saved(lesson(), THIRD, DAY).copy()).isEmpty();
    assertThat(saved(lesson(), THIRD, DAY.plusDays(1)).copy()).as("no change").isEmpty();
    saved(lesson(), SECOND, DAY.plusDays(1));

    assertThat(names())
        .containsExactly("mill.yaml", "mill.yaml.2026-12-01~", "mill.yaml.2026-12-02~");
    assertThat(folder.resolve("mill.yaml.2026-12-01~")).hasContent("score: a.xml");
    assertThat(folder.resolve("mill.yaml.2026-12-02~")).hasContent("score: a.xml\npart: Cello");
    assertThat(StoredLesson.read(lesson()).lesson()).isEqualTo(SECOND);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "shopping: milk", "positions: [1, 3]", "score: [", "\u0000"})
  void anotherFileIsNeverReplaced(String text) throws IOException {
    Files.writeString(lesson(), text);

    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> LessonStore.check(lesson()));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> saved(lesson(), FIRST, DAY))
        .withMessageContaining("is not replaced: choose another name");
    assertThat(lesson()).hasContent(text);
    assertThat(names()).containsExactly("mill.yaml");
  }

  @Test
  void aLessonThatChangedSinceItWasReadIsNotReplaced() throws IOException {
    saved(lesson(), FIRST, DAY);
    StoredLesson read = StoredLesson.read(lesson());
    Files.writeString(lesson(), "score: a.xml\npart: 2\n");

    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> LessonStore.save(lesson(), SECOND, Optional.of(read), DAY))
        .withMessageContaining("has changed since it was read");
    assertThat(lesson()).hasContent("score: a.xml\npart: 2");
    assertThat(names()).containsExactly("mill.yaml");
  }

  @Test
  void aReaderSeesTheOldTextOrTheNewOne() throws Exception {
    saved(lesson(), SECOND, DAY);
    saved(lesson(), THIRD, DAY);
    AtomicBoolean ended = new AtomicBoolean();
    List<Lesson> seen = new ArrayList<>();
    Thread reader =
        new Thread(
            () -> {
              while (!ended.get()) {
                seen.add(StoredLesson.read(lesson()).lesson());
              }
            });
    reader.start();
    for (int i = 0; i < 300; i++) {
      saved(lesson(), i % 2 == 0 ? SECOND : THIRD, DAY);
    }
    ended.set(true);
    reader.join();

    assertThat(seen).isNotEmpty().isSubsetOf(SECOND, THIRD);
    assertThat(names()).containsExactly("mill.yaml", "mill.yaml.2026-12-01~");
  }

  @Test
  void aLinkAndThePermissionsStay() throws IOException {
    assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
    saved(lesson(), FIRST, DAY);
    Files.setPosixFilePermissions(lesson(), PosixFilePermissions.fromString("rw-------"));
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), lesson());

    saved(link, SECOND, DAY);

    assertThat(link).isSymbolicLink();
    assertThat(StoredLesson.read(lesson()).lesson()).isEqualTo(SECOND);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(lesson())))
        .isEqualTo("rw-------");
  }

  @Test
  void theStudentIsFoundInTheFolderOfStudentsFirst() throws IOException {
    Files.writeString(lesson(), "score: scores/a.xml\nstudent: imke\njournal: j\n");
    StoredLesson lesson = StoredLesson.read(lesson());
    assertThat(lesson.scoreFile()).isEqualTo(folder.resolve("scores/a.xml"));
    assertThat(lesson.journalFile()).contains(folder.resolve("j"));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(lesson::studentFile)
        .withMessageContaining("there is no player file " + folder.resolve("students/imke.yaml"));

    Path beside = Files.writeString(folder.resolve("imke.yaml"), "positions: 1");
    assertThat(lesson.studentFile()).contains(beside);
    assertThat(StoredLesson.studentName(lesson(), beside)).isEqualTo("imke");

    Files.createDirectory(folder.resolve("students"));
    Path first = Files.writeString(folder.resolve("students/imke.yaml"), "positions: 1");
    assertThat(lesson.studentFile()).contains(first);
    assertThat(StoredLesson.studentName(lesson(), first)).isEqualTo("imke");
    assertThat(StoredLesson.studentName(lesson(), beside)).isEqualTo("imke.yaml");
    assertThat(StoredLesson.studentName(lesson(), folder.resolve("more/b.yml")))
        .isEqualTo("more/b.yml");
    assertThat(StoredLesson.nameBeside(folder.resolve("more/l.yaml"), first))
        .isEqualTo("../students/imke.yaml");
  }

  @Test
  void aFolderListsItsLessonsAndNamesDamagedOnes() throws IOException {
    saved(lesson(), FIRST, DAY);
    saved(folder.resolve("brook.yml"), SECOND, DAY);
    Files.writeString(folder.resolve("imke.yaml"), "positions: 1");
    Files.writeString(folder.resolve("mill.yaml.2026-12-01~"), "score: a.xml");
    Files.writeString(folder.resolve("damaged.yaml"), "score: a.xml\nmesures: 3");

    LessonFolder lessons = LessonFolder.read(folder);

    assertThat(lessons.lessons()).extracting(StoredLesson::name).containsExactly("brook", "mill");
    assertThat(lessons.problems())
        .singleElement()
        .asString()
        .contains("damaged.yaml, line 2: there is no key 'mesures'");
    assertThat(LessonFolder.read(Files.createDirectory(folder.resolve("empty"))).lessons())
        .isEqualTo(ImmutableList.of());
  }
}
