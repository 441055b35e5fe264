package fingering.cli.advice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.audition.RequiredSkill;
import fingering.cli.audition.AskedRows;
import fingering.cli.audition.AuditionHtml;
import fingering.cli.audition.PlannedSheet;
import fingering.cli.audition.SheetPieces.Problem;
import fingering.cli.audition.SheetPlanner;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.LimitOptions;
import fingering.cli.option.PlayerOptions;
import fingering.cli.student.Students;
import fingering.cli.text.SummaryText;
import fingering.demand.ShowPosition;
import fingering.demand.Skill;
import fingering.exercise.PlannedScale;
import fingering.exercise.Scale;
import fingering.exercise.ScaleKind;
import fingering.exercise.ScaleRequest;
import fingering.page.audition.ScaleResult;
import fingering.page.audition.SheetResult;
import fingering.page.audition.SheetResult.Advice;
import fingering.page.audition.SheetResult.Asked;
import fingering.sheet.AuditionSheet;
import fingering.sheet.SheetContent;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Letter;
import fingering.tables.Position;
import fingering.web.audition.SheetAdviser;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Plans the audition sheets and scales of the local page as 'audition' and 'scale' do. */
final class SheetAdvice implements SheetAdviser {

  private static SheetPlanner planner(AuditionSheet sheet) {
    return SheetPlanner.of(
        sheet, new PlayerOptions(), new InstrumentOptions(), false, new LimitOptions());
  }

  @Override
  public ImmutableList<String> problems(AuditionSheet sheet) {
    return planner(sheet).pieces().problems().stream()
        .map(Problem::message)
        .collect(ImmutableList.toImmutableList());
  }

  @Override
  public SheetResult plan(AuditionSheet sheet) {
    SheetPlanner planner = planner(sheet);
    PlannedSheet planned = planner.plan(Optional.empty());
    ImmutableList<Asked> rows = AskedRows.of(planned);
    return new SheetResult(
        AuditionHtml.content(planned, planner.scoring()),
        IntStream.range(0, rows.size())
            .mapToObj(row -> advised(rows.get(row), planned.audition().skills().get(row), planner))
            .collect(ImmutableList.toImmutableList()),
        planned.ready().stream()
            .map(ready -> ready.entry().number())
            .collect(ImmutableList.toImmutableList()),
        planned.problems().stream()
            .map(one -> new SheetResult.Problem(number(sheet, one.line()), one.message()))
            .collect(ImmutableList.toImmutableList()));
  }

  /** The number of the piece on a line of a sheet. */
  private static int number(AuditionSheet sheet, int line) {
    return sheet.entries().stream()
        .filter(entry -> entry.line() <= line)
        .max(Comparator.comparingInt(AuditionSheet.Entry::line))
        .map(AuditionSheet.Entry::number)
        .orElse(1);
  }

  /** What is missing, with a scale that would show it. */
  private static Asked advised(Asked row, RequiredSkill skill, SheetPlanner planner) {
    return skill.met() || planner.sheet().excerptsOnly()
        ? row
        : advice(skill.skill(), planner).map(row::with).orElse(row);
  }

  /** The easiest octave of a major scale that shows a skill in one position. */
  private static Optional<Advice> advice(Skill skill, SheetPlanner planner) {
    if (!(skill instanceof ShowPosition position)) {
      return Optional.empty();
    }
    ScalePlans plans =
        new ScalePlans(
            planner.students(),
            planner.scoring(),
            planner.player(),
            planner.sheet().instrument(),
            Optional.empty());
    return Stream.of(Letter.values())
        .flatMap(letter -> IntStream.rangeClosed(-1, 1).boxed().flatMap(a -> major(letter, a)))
        .flatMap(scale -> plans.plan(ScaleRequest.of(scale, 1), allowed(position)).stream())
        .filter(
            planned ->
                skill.amountShown(planned.plan().passage(), planned.plan().grips())
                    >= skill.amount())
        .min(Comparator.comparingLong(planned -> planned.plan().total()))
        .map(planned -> advice(planned, position));
  }

  private static Stream<Scale> major(Letter letter, int alter) {
    try {
      return Stream.of(new Scale(ScaleKind.MAJOR, letter, alter));
    } catch (FingeringException e) {
      // It has more than seven sharps or flats.
      return Stream.of();
    }
  }

  private static String allowed(ShowPosition position) {
    return "allow=" + position.position();
  }

  private static Advice advice(PlannedScale planned, ShowPosition position) {
    ScaleRequest request = planned.exercise().request();
    return new Advice(
        request.title(),
        position.position().display(),
        new SheetContent.Piece(
            true,
            ImmutableListMultimap.of(
                "scale",
                request.scale().toString(),
                "octaves",
                "1",
                "allow",
                position.position().toString())));
  }

  @Override
  public ScaleResult scale(
      ScaleRequest request, Instrument instrument, String from, Optional<Path> player) {
    PlayerOptions options = new PlayerOptions();
    options.from(() -> player);
    Students students = options.students();
    ScalePlans plans =
        new ScalePlans(
            students,
            options.weights.scoring(students),
            options,
            instrument,
            from.isEmpty() ? Optional.empty() : Optional.of(request.scale().start(from)));
    ImmutableList.Builder<ScaleResult.Way> ways = ImmutableList.builder();
    ways.add(plans.easiest(request));
    Position.range(Position.FIRST, Position.of(7)).stream()
        .flatMap(position -> plans.in(request, position).stream())
        .forEach(ways::add);
    return new ScaleResult(ways.build(), SummaryText.CARE);
  }
}
