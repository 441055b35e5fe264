package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.option.PracticeOutput;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.student.Students;
import fingering.cli.terminal.Screen;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.cli.text.HeadingText;
import fingering.cli.text.SummaryText;
import fingering.music.Passage;
import fingering.music.PrintedPart;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.page.MarksPage;
import fingering.page.staff.PlainEngraver;
import fingering.practice.Circle;
import fingering.practice.CircleFinder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists what to circle in a part. */
@Command(
    name = "marks",
    description = "Lists what to circle in a part before you play it.",
    footer = {
      "",
      "Examples:",
      "  fingering marks docs/demo/demo.musicxml",
      "  fingering marks docs/demo/demo.musicxml --measures 1-16 --tempo quarter=72",
      "  fingering marks docs/demo/demo.musicxml --output circles.html"
    })
final class MarksCommand extends BaseCommand {
  private static final int PLACE_COLUMNS = 16;
  private static final String TAKE_A_PENCIL = "Take a pencil. Circle these before you play.";

  @Mixin ScoreArgument score = new ScoreArgument();

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Mixin PracticeOutput output = new PracticeOutput();

  @Override
  public Integer call() {
    output.check();
    ScoreFile file = score.read();
    Score whole = ScoreReader.read(file);
    Passage passage = reading.read(whole, Students.UNKNOWN);
    PrintedPart printed = reading.printed(whole, passage);
    ImmutableList<Circle> circles = CircleFinder.of(passage, printed);
    String text =
        switch (output.format()) {
          case TEXT -> text(passage, circles);
          case HTML ->
              MarksPage.of(
                  HeadingText.title(passage),
                  ImmutableList.of(TAKE_A_PENCIL),
                  passage,
                  printed,
                  circles,
                  new PlainEngraver(),
                  SummaryText.CARE);
        };
    output.print(text, spec);
    return ExitCode.DONE;
  }

  private String text(Passage passage, List<Circle> circles) {
    List<String> lines = new ArrayList<>();
    TextStyle style = output.style();
    lines.add(style.bold(HeadingText.title(passage)));
    lines.add(TAKE_A_PENCIL);
    Optional<Circle.Kind> kind = Optional.empty();
    for (Circle circle : circles) {
      if (kind.filter(circle.kind()::equals).isEmpty()) {
        lines.add("");
        lines.add(style.bold(circle.kind().heading()));
        kind = Optional.of(circle.kind());
      }
      String place = "m. " + circle.place().measure() + ", beat " + circle.place().beatText();
      List<String> wrapped =
          TextLayout.wrap(circle.text(), Screen.columns() - PLACE_COLUMNS - 2, 0);
      lines.add("  " + TextLayout.pad(place, PLACE_COLUMNS) + wrapped.get(0));
      wrapped.stream().skip(1).forEach(more -> lines.add(" ".repeat(PLACE_COLUMNS + 2) + more));
    }
    if (circles.isEmpty()) {
      lines.add("");
      lines.add("Only notes are printed. Decide on dynamics yourself, and write them in.");
    }
    return String.join("\n", lines) + "\n";
  }
}
