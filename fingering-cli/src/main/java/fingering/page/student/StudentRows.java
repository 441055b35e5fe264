package fingering.page.student;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.engraving.drawing.Lane;
import fingering.music.Measure;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.page.PageContent;
import fingering.page.live.BesideView;
import fingering.page.music.FingerRows;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanFigure;
import fingering.plan.PlannedNote;
import fingering.player.Player;
import fingering.tables.FingeringException;
import fingering.verdict.PlanFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The plans of several students for the same music, side by side. */
public final class StudentRows {
  /** The most students at a time. */
  public static final int MOST = 4;

  /** The most measures that are drawn. */
  private static final int MEASURES = 40;

  /** The width of a line on a screen of usual width, in staff spaces. */
  private static final double WIDE = 100;

  private static final int WIDE_WINDOW = 700;

  private StudentRows() {}

  /**
   * A student with the plans for the passage.
   *
   * @param name the name of the student
   * @param player what the student has learned
   * @param content the plans
   */
  public record Planned(String name, Player player, PageContent content) {
    private Plan plan() {
      return content.main();
    }
  }

  /**
   * The rows.
   *
   * @param students one to four students with plans for the same measures
   * @param window the width of the window in pixels
   * @throws FingeringException if some of the notes are left out for one of the students
   */
  public static BesideView.Rows of(ImmutableList<Planned> students, int window) {
    Passage passage = students.get(0).content().comparison().passage();
    for (Planned student : students) {
      if (student.plan().notes().size() != students.get(0).plan().notes().size()) {
        throw new FingeringException(text("beside.unlike", student.name(), students.get(0).name()));
      }
    }
    Comparison comparison =
        new Comparison(
            passage,
            students.stream().map(Planned::plan).collect(ImmutableList.toImmutableList()),
            ImmutableList.of());
    ImmutableList<Measure> differing = comparison.differingMeasures();
    ImmutableList<Row> lanes =
        students.stream().map(Row::new).collect(ImmutableList.toImmutableList());
    ImmutableList.Builder<BesideView.Excerpt> music = ImmutableList.builder();
    FingerRows rows =
        new FingerRows(
            passage,
            students.get(0).content().printed(),
            lanes.stream().map(Row::lane).collect(ImmutableList.toImmutableList()),
            notes(comparison));
    double width = window < WIDE_WINDOW ? MusicPanel.NARROW : WIDE;
    for (Run run : runs(differing.subList(0, Math.min(MEASURES, differing.size())))) {
      music.addAll(rows.of(run.first(), run.last(), width));
    }
    return new BesideView.Rows(
        remarks(students.size(), passage, differing.size()),
        lanes.stream().map(Row::view).collect(ImmutableList.toImmutableList()),
        music.build(),
        differing.isEmpty() ? "" : text("beside.signs"));
  }

  /** Measures that follow each other, by index. */
  private record Run(int first, int last) {}

  private static List<Run> runs(List<Measure> measures) {
    List<Run> runs = new ArrayList<>();
    for (Measure measure : measures) {
      int last = runs.size() - 1;
      if (last >= 0 && runs.get(last).last() == measure.index() - 1) {
        runs.set(last, new Run(runs.get(last).first(), measure.index()));
      } else {
        runs.add(new Run(measure.index(), measure.index()));
      }
    }
    return runs;
  }

  private static ImmutableSet<NoteAddress> notes(Comparison comparison) {
    List<PlannedNote> notes = comparison.plans().get(0).notes();
    return IntStream.range(0, notes.size())
        .filter(comparison::differs)
        .mapToObj(note -> notes.get(note).note().address())
        .collect(ImmutableSet.toImmutableSet());
  }

  private static ImmutableList<String> remarks(int students, Passage passage, int differing) {
    String found =
        students == 1
            ? text("beside.one")
            : differing == 0
                ? text("beside.alike")
                : text("beside.differ", differing, passage.measures().size());
    String planned = text("beside.planned", passage.tempo().toString().replace("=", " = "));
    return differing <= MEASURES
        ? ImmutableList.of(found, planned)
        : ImmutableList.of(found, planned, text("beside.more", MEASURES));
  }

  /** A student in words and fingers. */
  private record Row(Planned student) {
    Lane lane() {
      return new Lane(student.name(), Lanes.of(student.plan()).above().get(0).marks());
    }

    BesideView.Row view() {
      PageContent content = student.content();
      PlanFigures figures = PlanFigures.of(student.plan());
      return new BesideView.Row(
          student.name(),
          String.join(" ", content.verdict().subList(0, content.rival().isPresent() ? 2 : 1)),
          text(
              "beside.figures",
              PlanFigure.SHIFTS.counted(figures.shifts()),
              PlanFigure.CROSSINGS.counted(figures.crossings()),
              PlanFigure.FOURTH_FINGERS.counted(figures.fourthFingers()),
              content.tempi().get(content.comparison().plans().indexOf(student.plan()))),
          fresh());
    }

    /** What is new to the student in the plan; empty if nobody said what is learned. */
    private String fresh() {
      Player player = student.player();
      boolean known =
          player.positions().isPresent()
              || player.patterns().isPresent()
              || player.extensions().isPresent()
              || player.shifts().isPresent();
      String name = student.plan().name() + ": ";
      return student.content().notes().values().stream()
          .filter(note -> known)
          .filter(note -> note.startsWith(name))
          .map(note -> text("beside.new", note.substring(name.length())))
          .findFirst()
          .orElse("");
    }
  }
}
