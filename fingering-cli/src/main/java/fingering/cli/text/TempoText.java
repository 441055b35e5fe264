package fingering.cli.text;

import fingering.music.Tempo;
import fingering.plan.Plan;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import fingering.tempo.TempoLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The comfortable tempo of plans as text. */
public final class TempoText {
  /** The number of measures that are listed as limits of a plan. */
  public static final int LIMITS = 3;

  /** The advice if a plan is faster than comfortable. */
  public static final String CARE =
      "Raise the tempo in small steps: stop if it hurts, rest, and ask your teacher or a clinician.";

  private TempoText() {}

  static String heading(PlayerSpeed level) {
    return "Comfortable tempo (player at level " + level.name() + ")";
  }

  /** A sentence for each plan, and advice if a planned tempo is faster than comfortable. */
  static List<String> sentences(List<Plan> plans, PlayerSpeed level) {
    List<ComfortableTempo> tempi =
        plans.stream().map(plan -> ComfortableTempo.of(plan, level)).toList();
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      sentences.add(plans.get(i).name() + ": " + sentence(tempi.get(i)));
    }
    if (tempi.stream().anyMatch(ComfortableTempo::exceeded)) {
      sentences.add("That is slower than the planned tempo. " + CARE);
    }
    return sentences;
  }

  /** The comfortable tempo of each plan, in few words. */
  static List<String> brief(List<Plan> plans, PlayerSpeed level) {
    return plans.stream()
        .map(plan -> ComfortableTempo.of(plan, level))
        .map(
            tempo ->
                tempo.wellAbove()
                    ? wellAbove(tempo.marked())
                    : tempo.tempo().map(TempoText::mark).orElse("any tempo"))
        .toList();
  }

  /** The limits of each plan that has any. */
  static List<String> limits(List<Plan> plans, PlayerSpeed level) {
    List<String> lines = new ArrayList<>();
    for (Plan plan : plans) {
      ComfortableTempo tempo = ComfortableTempo.of(plan, level);
      if (tempo.tempo().isPresent() && !tempo.wellAbove()) {
        lines.add(plan.name() + ": " + limits(tempo) + ".");
      }
    }
    return lines;
  }

  private static String limits(ComfortableTempo tempo) {
    return tempo.tightestDistinct(LIMITS).stream()
        .map(limit -> limit(limit, tempo.marked()))
        .collect(Collectors.joining(", "));
  }

  private static String sentence(ComfortableTempo tempo) {
    if (tempo.tempo().isEmpty()) {
      return "at any metronome tempo.";
    }
    if (tempo.wellAbove()) {
      return wellAbove(tempo.marked()) + ".";
    }
    return "up to "
        + mark(tempo.tempo().get())
        + " (planned at "
        + tempo.marked().perMinute().toPlainString()
        + "); limits: "
        + limits(tempo)
        + ".";
  }

  /**
   * A limit of a plan: {@code m. 14 (two shifts)}. Where the tempo differs from the opening, the
   * limit is given in the tempo there.
   */
  public static String limit(TempoLimit limit, Tempo opening) {
    String there =
        limit.marked().equals(opening)
            ? ""
            : limit.tempo().map(tempo -> ", " + mark(tempo)).orElse("");
    return "m. " + limit.measures() + " (" + limit.text() + there + ")";
  }

  /** A comfortable tempo so far above the planned one that the number does not matter. */
  public static String wellAbove(Tempo planned) {
    return "well above " + mark(planned);
  }

  /** A tempo as text: {@code quarter = 80}. */
  public static String mark(Tempo tempo) {
    return tempo.toString().replace("=", " = ");
  }
}
