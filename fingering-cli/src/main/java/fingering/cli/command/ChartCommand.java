package fingering.cli.command;

import fingering.cli.chart.ChartSvg;
import fingering.cli.chart.ChartText;
import fingering.cli.option.CompletionCandidates;
import fingering.cli.option.Converters;
import fingering.cli.option.HandOptions;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.NoteNamesOption;
import fingering.cli.output.ChartOutput;
import fingering.cli.terminal.Screen;
import fingering.fingerboard.Chart;
import fingering.fingerboard.ChartRequest;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Frame;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Key;
import fingering.tables.Position;
import fingering.tables.StringNames;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the fingerboard. */
@Command(
    name = "chart",
    description =
        "Draws the fingerboard: which finger plays each note, how far apart the notes are, and which ring with an open string.",
    footer = {
      "",
      "Examples:",
      "  fingering chart violin --position 1 --key D-major",
      "  fingering chart viola --string C",
      "  fingering chart cello --position 4 --output fourth.svg"
    })
final class ChartCommand extends BaseCommand {

  @Parameters(
      paramLabel = "INSTRUMENT",
      converter = Converters.InstrumentConverter.class,
      completionCandidates = CompletionCandidates.OfInstruments.class,
      description = "violin, viola, cello or bass.")
  Instrument instrument;

  @Option(
      names = "--position",
      paramLabel = "POSITION",
      description = "Show the fingers of this position: half, 1, 3, III and so on.")
  Optional<String> position = Optional.empty();

  @Option(
      names = "--at",
      paramLabel = "SEMITONES",
      description =
          "Which place, if the position has several: semitones from the open string to the first finger or the thumb.")
  Optional<Integer> at = Optional.empty();

  @Option(
      names = "--string",
      paramLabel = "STRING",
      description = "Show only this string: C, IV, 4 or 'sul C'. I is the highest.")
  Optional<String> string = Optional.empty();

  @Option(
      names = "--key",
      paramLabel = "KEY",
      description = "Show only the notes of this key: D-major, g-minor, Bb-major.")
  Optional<String> key = Optional.empty();

  @Mixin NoteNamesOption notes = new NoteNamesOption();

  @Mixin InstrumentOptions build = new InstrumentOptions();

  @Mixin HandOptions hand = new HandOptions();

  @Mixin ChartOutput output = new ChartOutput();

  @Override
  public Integer call() {
    if (at.isPresent() && position.isEmpty()) {
      throw usageError("--at needs a position; give --position too");
    }
    output.check();
    Chart chart = Chart.of(fingerboard(), request());
    String text =
        switch (output.format()) {
          case TEXT -> ChartText.of(chart, Screen.columns(), output.style());
          case SVG -> ChartSvg.of(chart);
        };
    output.print(text, spec);
    return ExitCode.DONE;
  }

  private Instrument instrument() {
    return build.apply(instrument);
  }

  private Fingerboard fingerboard() {
    return Fingerboard.of(instrument(), hand.hand());
  }

  private ChartRequest request() {
    return new ChartRequest(
        position.map(this::position),
        at.map(OptionalInt::of).orElse(OptionalInt.empty()),
        key.map(this::key),
        string
            .map(
                name ->
                    OptionalInt.of(StringNames.of(instrument()).find(notes.string(name)).number()))
            .orElse(OptionalInt.empty()));
  }

  private Key key(String text) {
    try {
      return notes.key(text);
    } catch (FingeringException e) {
      throw usageError("--key: " + e.getMessage(), e);
    }
  }

  private Position position(String text) {
    try {
      return Position.parse(text);
    } catch (FingeringException e) {
      Position highest =
          fingerboard().frames().stream()
              .map(Frame::position)
              .filter(position -> !position.equals(Position.THUMB))
              .max(Comparator.naturalOrder())
              .orElseThrow();
      throw usageError(
          "--position: "
              + e.getMessage()
              + "; the highest numbered position on the "
              + instrument().nameInSentence()
              + " is "
              + highest.display(),
          e);
    }
  }
}
