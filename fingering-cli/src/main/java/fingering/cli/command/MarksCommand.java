package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.lesson.LessonOption;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.PlanChoice;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.output.PracticeOutput;
import fingering.cli.terminal.Screen;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.cli.text.HeadingText;
import fingering.cli.text.SummaryText;
import fingering.lesson.LessonCircles;
import fingering.lesson.StoredLesson;
import fingering.music.Passage;
import fingering.page.MarksPage;
import fingering.plan.Plan;
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
    description =
        "Lists what to circle in a part before you play it; with --choose also the shifts of a"
            + " plan.",
    footer = {
      "",
      "Examples:",
      "  fingering marks docs/demo/demo.musicxml",
      "  fingering marks docs/demo/demo.musicxml --measures 1-16 --tempo quarter=72",
      "  fingering marks docs/demo/demo.musicxml --choose partly",
      "  fingering marks docs/demo/demo.musicxml --output circles.html"
    })
final class MarksCommand extends BaseCommand {
  private static final int PLACE_COLUMNS = 16;
  private static final String TAKE_A_PENCIL = "Take a pencil. Circle these before you play.";

  @Mixin ScoreArgument score = new ScoreArgument();

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Mixin LessonOption lesson = new LessonOption();

  @Mixin PlanChoice chosen = new PlanChoice();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin PracticeOutput output = new PracticeOutput();

  @Override
  public Integer call() {
    output.check();
    Optional<StoredLesson> stored = lesson.read();
    stored.ifPresent(this::take);
    chosen.check();
    PlanningContext planning = PlanningContext.read(score.read(), reading, player);
    Passage passage = planning.passage();
    ImmutableList<Circle> found =
        chosen.given() || chosen.keepsPrinted() || demands.any()
            ? CircleFinder.of(plan(planning), planning.printed())
            : CircleFinder.of(passage, planning.printed());
    ImmutableList<Circle> circles =
        stored.map(one -> one.lesson().circles()).orElse(LessonCircles.ALL).of(found);
    String text =
        switch (output.format()) {
          case TEXT -> text(passage, circles);
          case HTML ->
              MarksPage.of(
                  HeadingText.title(passage),
                  ImmutableList.of(TAKE_A_PENCIL),
                  passage,
                  planning.printed(),
                  circles,
                  SummaryText.CARE);
        };
    output.print(text, spec);
    return ExitCode.DONE;
  }

  private void take(StoredLesson stored) {
    score.from(stored);
    reading.from(stored, score);
    player.from(stored);
    chosen.from(stored, demands);
  }

  private Plan plan(PlanningContext planning) {
    return chosen.plan(
        planning.comparer(player, demands, !chosen.isFree()),
        chosen.freeBrief(demands, planning.passage()));
  }

  private String text(Passage passage, List<Circle> circles) {
    List<String> lines = new ArrayList<>();
    TextStyle style = output.style();
    lines.add(style.bold(HeadingText.title(passage)));
    lines.add(TAKE_A_PENCIL);
    int width = circles.stream().mapToInt(circle -> place(circle).length() + 1).max().orElse(0);
    int column = Math.max(PLACE_COLUMNS, width);
    Optional<Circle.Kind> kind = Optional.empty();
    for (Circle circle : circles) {
      if (kind.filter(circle.kind()::equals).isEmpty()) {
        lines.add("");
        lines.add(style.bold(circle.kind().heading()));
        kind = Optional.of(circle.kind());
      }
      List<String> wrapped = TextLayout.wrap(circle.text(), Screen.columns() - column - 2, 0);
      lines.add("  " + TextLayout.pad(place(circle), column) + wrapped.get(0));
      wrapped.stream().skip(1).forEach(more -> lines.add(" ".repeat(column + 2) + more));
    }
    if (circles.isEmpty()) {
      lines.add("");
      lines.add("Only notes are printed. Decide on dynamics yourself, and write them in.");
    }
    return String.join("\n", lines) + "\n";
  }

  private static String place(Circle circle) {
    return "m. " + circle.place().measure() + ", beat " + circle.place().beatText();
  }
}
