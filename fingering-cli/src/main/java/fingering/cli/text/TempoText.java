package fingering.cli.text;

import fingering.music.Tempo;
import fingering.plan.Plan;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import fingering.tempo.TempoLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Up to which tempo plans are comfortable, in words. */
public final class TempoText {
  /** Measures that are told as limits of a plan. */
  public static final int LIMITS = 3;

  /** What is said where a plan is planned faster than is comfortable. */
  public static final String CARE =
      "Raise the tempo in small steps: stop on pain, rest, and ask your teacher or a clinician.";

  private TempoText() {}

  static String heading(PlayerSpeed level) {
    return "Comfortable tempo (a player of level " + level.name() + ")";
  }

  /** A sentence for each plan, and a word of care where that is less than the tempo planned for. */
  static List<String> told(List<Plan> plans, PlayerSpeed level) {
    List<ComfortableTempo> tempi =
        plans.stream().map(plan -> ComfortableTempo.of(plan, level)).toList();
    List<String> told = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      told.add(plans.get(i).name() + ": " + sentence(tempi.get(i)));
    }
    if (alike(tempi)) {
      told.add(
          (tempi.size() == 2 ? "Both" : "All of them")
              + " are limited first in "
              + named(tempi.get(0).tightestDistinct(1).get(0))
              + ", at the same tempo: by the music there, not by the choice of plan.");
    }
    if (tempi.stream().anyMatch(ComfortableTempo::exceeded)) {
      told.add("That is less than the tempo planned for. " + CARE);
    }
    return told;
  }

  /** Whether plans differ, but neither in their tempo nor in the measures that limit it first. */
  private static boolean alike(List<ComfortableTempo> tempi) {
    return tempi.size() > 1
        && tempi.stream().allMatch(tempo -> tempo.tempo().isPresent() && !tempo.wellAbove())
        && tempi.stream().map(TempoText::first).distinct().count() == 1;
  }

  private static String named(TempoLimit limit) {
    return (limit.first().measureIndex() == limit.last().measureIndex() ? "measure " : "measures ")
        + limit.measures();
  }

  /** The tempo told of a plan, and the measures that limit it first. */
  private static List<String> first(ComfortableTempo tempo) {
    return List.of(
        tempo.tempo().map(TempoText::mark).orElse(""),
        tempo.tightestDistinct(1).stream().map(TempoLimit::measures).collect(Collectors.joining()));
  }

  private static String sentence(ComfortableTempo tempo) {
    if (tempo.tempo().isEmpty()) {
      return "at any tempo of a metronome.";
    }
    if (tempo.wellAbove()) {
      return wellAbove(tempo.marked()) + ".";
    }
    return "up to "
        + mark(tempo.tempo().get())
        + " (planned at "
        + tempo.marked().perMinute().toPlainString()
        + "); limits: "
        + tempo.tightestDistinct(LIMITS).stream()
            .map(limit -> limit(limit, tempo.marked()))
            .collect(Collectors.joining(", "))
        + ".";
  }

  /** Where another tempo is in force than at the beginning, its figure is told too. */
  public static String limit(TempoLimit limit, Tempo opening) {
    String there =
        limit.marked().equals(opening)
            ? ""
            : limit.tempo().map(tempo -> ", " + mark(tempo)).orElse("");
    return "m. " + limit.measures() + " (" + limit.text() + there + ")";
  }

  /** How a comfortable tempo is told whose figure nobody asks for. */
  public static String wellAbove(Tempo planned) {
    return "well above " + mark(planned);
  }

  public static String mark(Tempo tempo) {
    return tempo.toString().replace("=", " = ");
  }
}
