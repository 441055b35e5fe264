package fingering.web;

import fingering.cli.advice.LessonAdviser;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test with a server on a folder that is empty at first, and a visitor who has its page. */
abstract class ServedFolder {
  @TempDir Path folder;

  LocalServer server;
  Visitor visitor;

  Clock clock() {
    return Clock.systemUTC();
  }

  @BeforeEach
  final void serve() throws Exception {
    server = LocalServer.start(folder, new LessonAdviser(), clock());
    visitor = new Visitor(server).at(server.address());
  }

  @AfterEach
  final void stopServing() {
    server.close();
  }
}
