package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;

/** Whom a plan is for; shared by the commands. */
public final class PlayerOptions {
  @Option(
      names = "--player",
      paramLabel = "FILE",
      description =
          "A player file: what the student has learned, and the student's preset, hand and instrument. Options on the command line count before what it says. Given several times, one plan is made for all of a section.")
  List<Path> players = List.of();

  /** The students that the files describe. */
  public Students students() {
    return new Students(
        players.stream().map(Student::read).collect(ImmutableList.toImmutableList()));
  }
}
