package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.OutputFile;
import fingering.cli.file.WrittenFiles;
import fingering.cli.option.ChartOutput;
import fingering.cli.option.ScoreOptions;
import fingering.cli.practice.JournalText;
import fingering.cli.practice.ProgressSvg;
import fingering.cli.terminal.Dates;
import fingering.cli.terminal.ExitCode;
import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.practice.Journal;
import fingering.practice.JournalEntry;
import fingering.practice.JournalFile;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Keeps the practice journal. */
@Command(
    name = "journal",
    description = "Keeps the practice journal: what was clean, day by day.",
    mixinStandardHelpOptions = true,
    subcommands = {JournalCommand.Add.class, JournalCommand.Show.class},
    footer = {
      "",
      "The journal is a text file of your own. Lines are only ever added to it.",
      "",
      "Examples:",
      "  fingering journal add --clean quarter=66 --note 'bow quiet at last'",
      "  fingering journal show"
    })
final class JournalCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "say what to do: journal add, journal show");
  }

  /** Where the journal is kept. */
  static final class Kept {
    @Option(
        names = "--journal",
        paramLabel = "FILE",
        description = "The journal; practice.journal in this folder otherwise.")
    Path path = Path.of("practice.journal");

    JournalFile file() {
      return new JournalFile(path);
    }
  }

  /** Adds a line. */
  @Command(
      name = "add",
      description = "Adds a line to the journal; makes the file where there is none.",
      mixinStandardHelpOptions = true,
      sortOptions = false,
      footer = {
        "",
        "Examples:",
        "  fingering journal add --clean quarter=66 --note 'bow quiet at last'",
        "  fingering journal add --clean quarter=58 --measures 13-14"
      })
  static final class Add implements Callable<Integer> {
    @Spec CommandSpec spec;

    @Mixin Kept kept = new Kept();

    @Option(
        names = "--clean",
        paramLabel = "MARK",
        converter = ScoreOptions.TempoConverter.class,
        description = "The fastest tempo that was clean; leave it out where none was.")
    Optional<Tempo> clean = Optional.empty();

    @Option(
        names = "--measures",
        paramLabel = "MEASURES",
        converter = PlanCommand.SpanConverter.class,
        description = "Only these measures: 13, 13-14; the whole otherwise.")
    Optional<MeasureSpan> measures = Optional.empty();

    @Option(names = "--note", paramLabel = "TEXT", description = "What else there is to say.")
    String note = "";

    @Option(
        names = "--at",
        paramLabel = "TIME",
        converter = Dates.TimeConverter.class,
        description = "When it was, such as 2026-11-21T18:30; now otherwise.")
    Optional<LocalDateTime> at = Optional.empty();

    private final Clock clock;

    Add() {
      this(Clock.system(ZoneId.systemDefault()));
    }

    Add(Clock clock) {
      this.clock = clock;
    }

    @Override
    public Integer call() {
      if (clean.isEmpty() && note.isBlank()) {
        throw new ParameterException(
            spec.commandLine(), "nothing to write: give --clean, --note or both");
      }
      JournalEntry entry =
          new JournalEntry(
              at.orElseGet(() -> LocalDateTime.now(clock)),
              clean,
              measures.orElse(MeasureSpan.WHOLE),
              note);
      Journal now = kept.file().add(entry);
      Journal one = new Journal(ImmutableList.of(entry), now.badLines(), now.remarks());
      spec.commandLine()
          .getOut()
          .print(JournalText.of(one, OutputFile.columns(), new OutputFile().style()));
      WrittenFiles.tell(spec, kept.path);
      return ExitCode.DONE;
    }
  }

  /** Shows it. */
  @Command(
      name = "show",
      description = "Shows the journal, or a picture of the progress in it.",
      mixinStandardHelpOptions = true,
      sortOptions = false,
      footer = {
        "",
        "Examples:",
        "  fingering journal add --clean quarter=66",
        "  fingering journal show",
        "  fingering journal show --to quarter=96 --output progress.svg"
      })
  static final class Show implements Callable<Integer> {
    @Spec CommandSpec spec;

    @Mixin Kept kept = new Kept();

    @Option(
        names = "--to",
        paramLabel = "MARK",
        converter = ScoreOptions.TempoConverter.class,
        description = "The tempo to be reached, drawn as a line into the picture.")
    Optional<Tempo> to = Optional.empty();

    @Mixin ChartOutput output = new ChartOutput();

    @Override
    public Integer call() {
      output.check();
      Journal journal = kept.file().read();
      String text =
          switch (output.format()) {
            case TEXT -> JournalText.of(journal, OutputFile.columns(), output.style());
            case SVG -> ProgressSvg.of(journal, to, ProgressSvg.Size.SHEET);
          };
      output.print(text, spec);
      return ExitCode.DONE;
    }
  }
}
