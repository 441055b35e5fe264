package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.cli.file.PlanFile;
import fingering.demand.AllowPositions;
import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.demand.MeasureSpan;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.tables.Position;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    allow.forEach(each -> all.add(text.allow(each)));
    strings.forEach(each -> all.add(text.strings(each)));
    avoid.forEach(each -> all.addAll(text.avoid(each)));
    stay.forEach(each -> all.add(text.stay(each)));
    fix.forEach(each -> all.add(text.fix(each)));
    keepPlan.forEach(each -> all.add(text.keepPlan(each)));
    show.forEach(each -> all.add(text.show(each)));
    showStay.forEach(each -> all.add(text.showStay(each)));
    showShift.forEach(each -> all.add(text.showShift(each)));
    showTechnique.forEach(each -> all.add(text.showTechnique(each)));
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
    return Brief.free(any() ? name() : "free choice");
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
    return Stream.of(
            allow, strings, avoid, stay, fix, keepPlan, show, showStay, showShift, showTechnique)
        .mapToInt(Collection::size)
        .sum();
  }
}
