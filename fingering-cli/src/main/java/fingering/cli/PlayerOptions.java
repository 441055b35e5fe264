package fingering.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Whom a plan is for; shared by the commands. */
final class PlayerOptions {
  @Option(
      names = "--player",
      paramLabel = "FILE",
      description = {
        "A player file: what the student has learned, and the student's preset,",
        "hand and instrument. Options on the command line go before it."
      })
  Optional<Path> player = Optional.empty();

  /** The student that the file describes. */
  Student student() {
    return player.map(Student::read).orElse(Student.UNKNOWN);
  }
}
