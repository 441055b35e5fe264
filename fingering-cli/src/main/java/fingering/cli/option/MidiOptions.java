package fingering.cli.option;

import fingering.cli.file.OutputPaths;
import fingering.music.Tempo;
import fingering.practice.PracticeDay;
import fingering.practice.PracticePlan;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A MIDI file of the passage to play along with, and its tempo. */
public final class MidiOptions {
  @Spec(Spec.Target.MIXEE)
  CommandSpec command;

  @Option(
      names = "--midi",
      paramLabel = "FILE",
      description =
          "Also write the passage as a new MIDI file (.mid) to play along with, with clicks and one"
              + " measure to count in, at the tempo that the first day starts at.")
  Optional<Path> file = Optional.empty();

  @Option(
      names = "--midi-tempo",
      paramLabel = "MARK",
      converter = Converters.TempoConverter.class,
      description = "Another tempo for the MIDI file, such as a later step of the day: quarter=63.")
  Optional<Tempo> tempo = Optional.empty();

  /**
   * Checks the options before any work is done.
   *
   * @throws ParameterException if there is a tempo without a file
   * @throws fingering.musicxml.UnwritableScoreException if the file cannot be made
   */
  public void check() {
    if (tempo.isPresent() && file.isEmpty()) {
      throw new ParameterException(
          command.commandLine(), "--midi-tempo needs a file: add --midi and its name");
    }
    file.ifPresent(path -> OutputPaths.requireNew(path, "--midi"));
  }

  /** The file to write, if there is one. */
  public Optional<Path> file() {
    return file;
  }

  /** The tempo of the file: that of the option, or the first step of the first day of practice. */
  public Tempo tempo(PracticePlan practice) {
    return tempo.orElseGet(
        () ->
            practice.whole().days().stream()
                .filter(day -> day.kind() != PracticeDay.Kind.REST)
                .findFirst()
                .orElseThrow()
                .start());
  }
}
