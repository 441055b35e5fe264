package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.WrittenFiles;
import fingering.cli.lesson.LessonOption;
import fingering.cli.option.Converters;
import fingering.cli.output.ChartOutput;
import fingering.cli.output.OutputFile;
import fingering.cli.practice.JournalText;
import fingering.cli.practice.ProgressSvg;
import fingering.cli.terminal.Screen;
import fingering.demand.MeasureSpan;
import fingering.lesson.Hearing;
import fingering.lesson.StoredLesson;
import fingering.music.Tempo;
import fingering.musicxml.SelectionException;
import fingering.practice.Journal;
import fingering.practice.JournalEntry;
import fingering.practice.JournalFile;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Keeps the practice journal. */
@Command(
    name = "journal",
    description = "Keeps the practice journal: the tempi that were clean, day by day.",
    subcommands = {JournalCommand.Add.class, JournalCommand.Show.class},
    footer = {
      "",
      "The journal is a text file. Lines are only added to it, never changed.",
      "",
      "Examples:",
      "  fingering journal add --clean quarter=66 --note 'bow quiet at last'",
      "  fingering journal show"
    })
final class JournalCommand extends BaseCommand {
  @Override
  public Integer call() {
    throw usageError("choose one of journal add, journal show");
  }

  /** The file of the journal. */
  static final class JournalOption {
    @Option(
        names = "--journal",
        paramLabel = "FILE",
        description =
            "The journal. Default: that of the lesson, else practice.journal in this folder.")
    Optional<Path> path = Optional.empty();

    @Mixin LessonOption lesson = new LessonOption();

    /** The journal that is typed, that of the lesson, or the usual one. */
    Path path(Optional<StoredLesson> stored) {
      if (path.isEmpty() && stored.filter(one -> one.journalFile().isEmpty()).isPresent()) {
        throw new SelectionException(
            "%s names no journal: add a line such as 'journal: %s.journal' to it, or give --journal."
                .formatted(stored.get().file(), stored.get().name()));
      }
      return path.or(() -> stored.flatMap(StoredLesson::journalFile))
          .orElse(Path.of("practice.journal"));
    }
  }

  /** Adds a line. */
  @Command(
      name = "add",
      description = "Adds a line to the journal; creates the file if there is none.",
      footer = {
        "",
        "Examples:",
        "  fingering journal add --clean quarter=66 --note 'bow quiet at last'",
        "  fingering journal add --clean quarter=58 --measures 13-14"
      })
  static final class Add extends BaseCommand {
    @Mixin JournalOption journal = new JournalOption();

    @Option(
        names = "--clean",
        paramLabel = "MARK",
        converter = Converters.TempoConverter.class,
        description = "The fastest tempo that was clean. Leave it out if none was.")
    Optional<Tempo> clean = Optional.empty();

    @Option(
        names = "--measures",
        paramLabel = "MEASURES",
        converter = Converters.MeasureSpanConverter.class,
        description = "Only these measures: 13, or 13-14. Default: the whole piece.")
    Optional<MeasureSpan> measures = Optional.empty();

    @Option(names = "--note", paramLabel = "TEXT", description = "A remark of your own.")
    String note = "";

    @Option(
        names = "--at",
        paramLabel = "TIME",
        converter = Converters.DateTimeConverter.class,
        description = "Date and time of the practice, such as 2026-11-21T18:30. Default: now.")
    Optional<LocalDateTime> at = Optional.empty();

    private final Clock clock = Clock.system(ZoneId.systemDefault());

    @Override
    public Integer call() {
      if (clean.isEmpty() && note.isBlank()) {
        throw usageError("nothing to write: give --clean, --note or both");
      }
      JournalEntry entry =
          new JournalEntry(
              at.orElseGet(() -> LocalDateTime.now(clock)),
              clean,
              measures.orElse(MeasureSpan.WHOLE),
              note);
      Path path = journal.path(journal.lesson.read());
      Journal whole = new JournalFile(path).add(entry);
      Journal added = new Journal(ImmutableList.of(entry), whole.badLines(), whole.remarks());
      spec.commandLine()
          .getOut()
          .print(JournalText.of(added, Screen.columns(), new OutputFile().style()));
      WrittenFiles.report(spec, path);
      return ExitCode.DONE;
    }
  }

  /** Shows the journal. */
  @Command(
      name = "show",
      description = "Shows the journal, or a picture of your progress.",
      footer = {
        "",
        "Examples:",
        "  fingering journal add --clean quarter=66",
        "  fingering journal show",
        "  fingering journal show --to quarter=96 --output progress.svg"
      })
  static final class Show extends BaseCommand {
    @Mixin JournalOption journal = new JournalOption();

    @Option(
        names = "--to",
        paramLabel = "MARK",
        converter = Converters.TempoConverter.class,
        description = "The goal tempo, drawn as a line in the picture.")
    Optional<Tempo> to = Optional.empty();

    @Mixin ChartOutput output = new ChartOutput();

    @Override
    public Integer call() {
      output.check();
      Optional<StoredLesson> lesson = journal.lesson.read();
      Journal entries = new JournalFile(journal.path(lesson)).read();
      to = to.or(() -> lesson.flatMap(one -> one.lesson().hearing()).flatMap(Hearing::tempo));
      String text =
          switch (output.format()) {
            case TEXT -> JournalText.of(entries, Screen.columns(), output.style());
            case SVG -> ProgressSvg.of(entries, to, ProgressSvg.Size.SHEET);
          };
      output.print(text, spec);
      return ExitCode.DONE;
    }
  }
}
