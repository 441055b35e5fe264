package fingering.web.running;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The file by which a second start finds a server. */
class ServerFileTest {
  private static final RunningServer SERVER =
      new RunningServer("127.0.0.1:40000", "s".repeat(24), "p".repeat(24));

  @TempDir Path temporary;

  private Path programs;
  private Path teachers;
  private ServerFile file;

  @BeforeEach
  void names() {
    programs = temporary.resolve("state").resolve("fingering");
    teachers = temporary.resolve("Fingering");
    file = ServerFile.of(programs, teachers);
  }

  private Path written() throws Exception {
    assertThat(file.write(SERVER)).isTrue();
    try (Stream<Path> all = Files.list(programs)) {
      List<Path> files = all.toList();
      assertThat(files).hasSize(1);
      return files.get(0);
    }
  }

  @Test
  void isReadByItsOwnerOnlyAndNotInTheTeachersFolder() throws Exception {
    Path path = written();
    assertThat(file.read()).contains(SERVER);
    assertThat(teachers).doesNotExist();
    if (Files.getFileStore(path).supportsFileAttributeView("posix")) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path)))
          .isEqualTo("rw-------");
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(programs)))
          .isEqualTo("rwx------");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"rw-r--r--", "rw----r--", "rw--w----"})
  void fileThatOthersCanReadOrWriteIsNotTrusted(String permissions) throws Exception {
    Files.setPosixFilePermissions(written(), PosixFilePermissions.fromString(permissions));
    assertThat(file.read()).isEmpty();
    assertThat(file.write(SERVER)).isTrue();
    assertThat(file.read()).contains(SERVER);
  }

  @Test
  void linkIsNotTrusted() throws Exception {
    Path path = written();
    Path moved = Files.move(path, temporary.resolve("moved"));
    Files.createSymbolicLink(path, moved);
    assertThat(file.read()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "127.0.0.1:40000",
        "evil.example:80\nssssssssssssssssssssssss\npppppppppppppppppppppppp\n%s",
        "127.0.0.1:40000\nshort\npppppppppppppppppppppppp\n%s",
        "127.0.0.1:40000\nssssssssssssssssssssssss\npppppppppppppppppppppppp\nelsewhere",
        "127.0.0.1:40000\nssssssssssssssssssssssss\npppppppppppppppppppppppp\n%s\nmore"
      })
  void otherTextIsNotTrusted(String text) throws Exception {
    Files.writeString(written(), text.replace("%s", teachers.toString()));
    assertThat(file.read()).isEmpty();
  }

  @Test
  void eachFolderHasItsOwnServerHoweverItIsNamed() throws Exception {
    assertThat(file.write(SERVER)).isTrue();
    assertThat(ServerFile.of(programs, temporary.resolve("other")).read()).isEmpty();
    assertThat(ServerFile.of(programs, temporary.resolve("x/../Fingering")).read())
        .contains(SERVER);

    Files.createDirectory(teachers);
    Path link = Files.createSymbolicLink(temporary.resolve("link"), teachers);
    assertThat(ServerFile.of(programs, teachers).read()).contains(SERVER);
    assertThat(ServerFile.of(programs, link).read()).contains(SERVER);
  }

  @Test
  void whatCannotBeWrittenIsNoError() throws Exception {
    Files.writeString(temporary.resolve("state"), "a file where the folder should be");
    assertThat(file.write(SERVER)).isFalse();
    assertThat(file.read()).isEmpty();
    assertThat(file.<String>inTurn(() -> "done")).isEqualTo("done");
    file.delete(SERVER);
  }

  @Test
  void serverDeletesItsOwnFileOnly() throws Exception {
    Path path = written();
    file.delete(new RunningServer("127.0.0.1:40001", SERVER.secret(), SERVER.proof()));
    assertThat(path).exists();
    file.delete(SERVER);
    assertThat(path).doesNotExist();
  }

  @Test
  void startsTakeTurns() throws Exception {
    int starts = 4;
    AtomicInteger present = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    CountDownLatch done = new CountDownLatch(starts);
    for (int i = 0; i < starts; i++) {
      new Thread(
              () -> {
                file.inTurn(
                    () -> {
                      most.accumulateAndGet(present.incrementAndGet(), Math::max);
                      // Takes long enough for others to come, if they could.
                      file.write(SERVER);
                      return present.decrementAndGet();
                    });
                done.countDown();
              })
          .start();
    }
    assertThat(done.await(20, TimeUnit.SECONDS)).isTrue();
    assertThat(most).hasValue(1);
  }
}
