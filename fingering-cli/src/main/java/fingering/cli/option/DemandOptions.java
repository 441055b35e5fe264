package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import fingering.cli.file.PlanFile;
import fingering.demand.AllowPositions;
import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.demand.MeasureSpan;
import fingering.lesson.LessonPlan;
import fingering.lesson.LessonPlanner;
import fingering.lesson.StoredLesson;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.tables.Position;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The demands on a plan: what it must use, avoid and show. */
public final class DemandOptions {
  @Spec(Spec.Target.MIXEE)
  CommandSpec command;

  @Option(
      names = "--allow",
      paramLabel = "POSITIONS",
      description =
          "Use only these positions: 1,half. Add @9-16 for measures 9 to 16 only; --strings and"
              + " --avoid accept measures too. All these options may be repeated.")
  List<String> allow = List.of();

  @Option(
      names = "--strings",
      paramLabel = "STRINGS",
      description = "Use only these strings: C, or III,IV@9-16.")
  List<String> strings = List.of();

  @Option(
      names = "--avoid",
      paramLabel = "THINGS",
      description =
          "Avoid these: open-strings, first-finger, second-finger, third-finger, fourth-finger,"
              + " thumb, extensions, harmonics.")
  List<String> avoid = List.of();

  @Option(
      names = "--stay",
      paramLabel = "POSITION@MEASURES",
      description = "Stay in one position: 3@6-11.")
  List<String> stay = List.of();

  @Option(
      names = "--fix",
      paramLabel = "M.BEAT=STRING/FINGER",
      description =
          "Fix one note, here on beat 3 of measure 12: 12.3=III/4 (string III, finger 4), 12.3=III,"
              + " 12.3=/4, or 12.3=III/4@3 (in 3rd position).")
  List<String> fix = List.of();

  @Option(
      names = "--keep-plan",
      paramLabel = "FILE@MEASURES",
      description =
          "Finger notes as in an earlier plan, saved with 'plan --format json': plan.json, or"
              + " plan.json@9-16 for some measures.")
  List<String> keepPlan = List.of();

  @Option(
      names = "--show",
      paramLabel = "POSITION=NOTES",
      description = "Show a position in this many stopped notes or more: 3=8.")
  List<String> show = List.of();

  @Option(
      names = "--show-stay",
      paramLabel = "POSITION=MEASURES",
      description = "Stay in a position for this many whole measures or more: 3=2.")
  List<String> showStay = List.of();

  @Option(
      names = "--show-shift",
      paramLabel = "KIND=TIMES",
      description =
          "Show this many shifts or more: any=3, up=2, first-finger=1, 'up same-finger=2'. The"
              + " kinds are those of player files.")
  List<String> showShift = List.of();

  @Option(
      names = "--show-technique",
      paramLabel = "THING",
      description = "Show one of the things listed under --avoid, in at least one note.")
  List<String> showTechnique = List.of();

  /** The name of the plan of a lesson, while its demands are all there are. */
  private Optional<String> title = Optional.empty();

  /** Takes the demands of a plan of a lesson; those that are typed come after them. */
  void from(StoredLesson lesson, LessonPlan plan) {
    title = any() || plan.demands().isEmpty() ? Optional.empty() : Optional.of(plan.name());
    LessonPlan all = lesson.here(plan).with(typed());
    all.demands().asMap().forEach((key, values) -> set(key, ImmutableList.copyOf(values)));
  }

  /** A plan of a lesson that also meets these demands. */
  public Plan plan(LessonPlanner planner, StoredLesson lesson, LessonPlan wanted) {
    LessonPlan all = lesson.here(wanted).with(typed());
    // A demand that does not fit is a mistake in what was typed.
    Converters.parsed(command, () -> all.brief(planner.parser()));
    return planner.plan(all);
  }

  /** The demands as typed, by their keys in briefs. */
  public ImmutableListMultimap<String, String> typed() {
    ImmutableListMultimap.Builder<String, String> all = ImmutableListMultimap.builder();
    byKey().forEach(all::putAll);
    return all.build();
  }

  private ImmutableMap<String, List<String>> byKey() {
    return ImmutableMap.<String, List<String>>builder()
        .put("allow", allow)
        .put("strings", strings)
        .put("avoid", avoid)
        .put("stay", stay)
        .put("fix", fix)
        .put("keep-plan", keepPlan)
        .put("show", show)
        .put("show-stay", showStay)
        .put("show-shift", showShift)
        .put("show-technique", showTechnique)
        .buildOrThrow();
  }

  private void set(String key, List<String> values) {
    switch (key) {
      case "allow" -> allow = values;
      case "strings" -> strings = values;
      case "avoid" -> avoid = values;
      case "stay" -> stay = values;
      case "fix" -> fix = values;
      case "keep-plan" -> keepPlan = values;
      case "show" -> show = values;
      case "show-stay" -> showStay = values;
      case "show-shift" -> showShift = values;
      case "show-technique" -> showTechnique = values;
      default -> throw new IllegalArgumentException(key);
    }
  }

  /** Whether any demand is given. */
  public boolean any() {
    return count() > 0;
  }

  /**
   * The demands on a passage, in the order of the options.
   *
   * @throws ParameterException if one of them cannot be read; the message is one sentence
   */
  public ImmutableList<Demand> of(Passage passage) {
    return Converters.parsed(command, () -> parse(passage));
  }

  private ImmutableList<Demand> parse(Passage passage) {
    DemandParser text = PlanFile.demands(passage, Path.of(""));
    ImmutableList.Builder<Demand> all = ImmutableList.builder();
    typed().forEach((key, value) -> all.addAll(text.read(key, value)));
    return all.build();
  }

  /** The positions allowed in every measure; empty for all positions. */
  public ImmutableSet<Position> allowedPositions() {
    return Converters.parsed(
        command,
        () ->
            allow.stream()
                .filter(DemandOptions::hasNoMeasures)
                .findFirst()
                .map(DemandParser::positions)
                .orElse(ImmutableSet.of()));
  }

  private static boolean hasNoMeasures(String positions) {
    return positions.indexOf('@') < 0;
  }

  /** All demands except {@link #allowedPositions}. */
  ImmutableList<Demand> exceptAllowedPositions(Passage passage) {
    return of(passage).stream()
        .filter(
            demand -> !(demand instanceof AllowPositions in && in.span().equals(MeasureSpan.WHOLE)))
        .collect(ImmutableList.toImmutableList());
  }

  /** The brief of a free plan, named after its demands. */
  public Brief freeBrief() {
    return Brief.free(title.orElseGet(() -> any() ? name() : "free choice"));
  }

  /** The name of a plan with these demands: the positions, if they are the only demand. */
  private String name() {
    return allow.size() == 1 && hasNoMeasures(allow.get(0)) && count() == 1
        ? "positions "
            + DemandParser.positions(allow.get(0)).stream()
                .sorted()
                .map(Object::toString)
                .collect(Collectors.joining(", "))
        : "as demanded";
  }

  private int count() {
    return typed().size();
  }
}
