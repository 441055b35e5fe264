package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.cli.file.PlanFile;
import fingering.demand.AllowPositions;
import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.demand.MeasureSpan;
import fingering.music.Passage;
import fingering.musicxml.SelectionException;
import fingering.plan.Brief;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a plan must keep, avoid and show; shared by the commands. */
public final class DemandOptions {
  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(
      names = "--allow",
      paramLabel = "POSITIONS",
      description =
          "Positions allowed: 1,half; for some measures alone 1,half@9-16. --strings, --avoid and --stay are limited so too, and each may be given several times.")
  List<String> allow = List.of();

  @Option(
      names = "--strings",
      paramLabel = "STRINGS",
      description = "Strings allowed: C, or III,IV@9-16.")
  List<String> strings = List.of();

  @Option(
      names = "--avoid",
      paramLabel = "THINGS",
      description =
          "What to do without: open-strings, fourth-finger (or first-, second-, third-), thumb, extensions, harmonics.")
  List<String> avoid = List.of();

  @Option(
      names = "--stay",
      paramLabel = "POSITION@MEASURES",
      description = "Keep the hand in one position: 3@6-11.")
  List<String> stay = List.of();

  @Option(
      names = "--fix",
      paramLabel = "M.BEAT=STRING/FINGER",
      description =
          "How to take one note, here beat 3 of measure 12: 12.3=III/4 with finger 4 on string III; 12.3=III or 12.3=/4; 12.3=III/4@3 in 3rd position.")
  List<String> fix = List.of();

  @Option(
      names = "--keep-plan",
      paramLabel = "FILE@MEASURES",
      description =
          "Take notes as an earlier plan does, printed by 'plan --format json': plan.json, or for some measures alone plan.json@9-16.")
  List<String> keepPlan = List.of();

  @Option(
      names = "--show",
      paramLabel = "POSITION=NOTES",
      description = "Show a position in so many stopped notes: 3=8.")
  List<String> show = List.of();

  @Option(
      names = "--show-stay",
      paramLabel = "POSITION=MEASURES",
      description = "Show a stay of so many whole measures in a position: 3=2.")
  List<String> showStay = List.of();

  @Option(
      names = "--show-shift",
      paramLabel = "KIND=TIMES",
      description =
          "Show shifts: any=3, up=2, first-finger=1, 'up same-finger=2'; the kinds are those of a player file.")
  List<String> showShift = List.of();

  @Option(
      names = "--show-technique",
      paramLabel = "THING",
      description = "Show, in one note at least, one of the things that --avoid names.")
  List<String> showTechnique = List.of();

  /** Whether anything is demanded. */
  boolean any() {
    return count() > 0;
  }

  /**
   * The demands on a passage, in the order of the options.
   *
   * @throws ParameterException if one of them cannot be read; the message is one sentence
   */
  public ImmutableList<Demand> of(Passage passage) {
    return typed(() -> read(passage));
  }

  /** What is read of the options; mistyped ones are told as such. */
  private <T> T typed(Supplier<T> reading) {
    try {
      return reading.get();
    } catch (SelectionException e) {
      throw e;
    } catch (FingeringException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }

  private ImmutableList<Demand> read(Passage passage) {
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

  /** The positions allowed everywhere, for the plans of 'compare' that go up. */
  public ImmutableSet<Position> allowed() {
    return typed(
        () ->
            allow.stream()
                .filter(DemandOptions::everywhere)
                .findFirst()
                .map(DemandParser::positions)
                .orElse(ImmutableSet.of()));
  }

  private static boolean everywhere(String positions) {
    return positions.indexOf('@') < 0;
  }

  /** The demands but for the positions allowed everywhere. */
  ImmutableList<Demand> besidesAllowed(Passage passage) {
    return of(passage).stream()
        .filter(
            demand -> !(demand instanceof AllowPositions in && in.span().equals(MeasureSpan.WHOLE)))
        .collect(ImmutableList.toImmutableList());
  }

  /** The brief of a plan of free choice, called after the demands. */
  public Brief free() {
    return Brief.free(any() ? name() : "free choice");
  }

  /** What to call a plan that meets the demands: the positions, where nothing else is asked. */
  private String name() {
    return allow.size() == 1 && everywhere(allow.get(0)) && count() == 1
        ? "positions "
            + DemandParser.positions(allow.get(0)).stream()
                .sorted()
                .map(Object::toString)
                .collect(Collectors.joining(", "))
        : "as demanded";
  }

  private int count() {
    return allow.size()
        + strings.size()
        + avoid.size()
        + stay.size()
        + fix.size()
        + keepPlan.size()
        + show.size()
        + showStay.size()
        + showShift.size()
        + showTechnique.size();
  }
}
