package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Movements;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanFigure;
import fingering.plan.PlannedNote;
import fingering.plan.RuleCost;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import fingering.verdict.PlanFigures;
import fingering.verdict.Verdict;
import fingering.verdict.Verdict.Reason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A verdict in words that a pupil understands: the plan to take, what it saves, what it asks. */
public final class VerdictText {
  private static final String FIRST = "1st position";

  /** What a plan saves or needs, in the order in which sentences name it. */
  private static final ImmutableList<PlanFigure> NAMED =
      ImmutableList.of(PlanFigure.CROSSINGS, PlanFigure.SHIFTS, PlanFigure.FOURTH_FINGERS);

  /** Up to this number, shifts are described. */
  private static final int FEW_SHIFTS = 6;

  private final Comparison comparison;
  private final PlayerSpeed speed;
  private final Verdict verdict;

  private VerdictText(Comparison comparison, PlayerSpeed speed, Verdict verdict) {
    this.comparison = comparison;
    this.speed = speed;
    this.verdict = verdict;
  }

  /** The sentences, the answer first. */
  public static ImmutableList<String> of(
      Comparison comparison, PlayerSpeed speed, Verdict verdict) {
    return new VerdictText(comparison, speed, verdict).sentences();
  }

  private ImmutableList<String> sentences() {
    ImmutableList.Builder<String> sentences = ImmutableList.builder();
    sentences.add(answer());
    verdict.rival().ifPresent(rival -> sentences.addAll(against(rival)));
    shifts().ifPresent(sentences::add);
    sentences.add(tempo());
    return sentences.build();
  }

  private String answer() {
    Plan plan = verdict.plan();
    String where = Whereabouts.of(plan);
    return switch (verdict.reason()) {
      case ONLY -> capital(where) + ": " + figures(PlanFigures.of(plan)) + ".";
      case ALIKE ->
          "All plans have the same fingering: "
              + where
              + ", "
              + figures(PlanFigures.of(plan))
              + ".";
      default ->
          plan.name().equals(FIRST)
              ? "Stay in " + FIRST + (Whereabouts.low(plan) ? "." : ": " + where + ".")
              : "Take '" + plan.name() + "': " + where + ".";
    };
  }

  private List<String> against(Plan rival) {
    List<String> sentences = new ArrayList<>();
    PlanFigures change = verdict.change();
    List<String> saved = new ArrayList<>();
    List<String> needed = new ArrayList<>();
    for (PlanFigure figure : NAMED) {
      int more = change.count(figure);
      if (more != 0) {
        (more < 0 ? saved : needed).add(figure.counted(Math.abs(more)));
      }
    }
    if (verdict.reason() == Reason.RIVAL_SAVES_NOTHING) {
      sentences.add(
          "'%s' saves nothing here%s."
              .formatted(rival.name(), saved.isEmpty() ? "" : " and needs " + more(saved)));
    } else if (verdict.plan().name().equals(FIRST)) {
      sentences.add(
          needed.isEmpty()
              ? "'%s' is harder%s.".formatted(rival.name(), mainly(rival))
              : "'%s' would save %s, but %s."
                  .formatted(
                      rival.name(),
                      joined(needed),
                      saved.isEmpty() ? "is harder" + mainly(rival) : "needs " + more(saved)));
    } else {
      sentences.add(
          "Compared with '%s', it %s%s."
              .formatted(
                  rival.name(),
                  saved.isEmpty() ? "is easier" + mainly(rival) : "saves " + joined(saved),
                  needed.isEmpty()
                      ? ""
                      : (saved.isEmpty() ? ", but needs " : " and needs ") + more(needed)));
    }
    if (verdict.reason() == Reason.TEMPO) {
      sentences.add("Only this plan is comfortable at the planned tempo.");
    } else if (verdict.close()) {
      sentences.add("It is a close call: try both.");
    }
    return sentences;
  }

  /** The rule by which the rival costs more than the plan, above all others. */
  private String mainly(Plan rival) {
    return worst(rival, verdict.plan())
        .map(rule -> ", mostly because of '" + rule.toLowerCase(Locale.ROOT) + "'")
        .orElse("");
  }

  private static Optional<String> worst(Plan costlier, Plan other) {
    return costlier.rules().stream()
        .filter(rule -> rule.cost() > cost(other, rule.rule()))
        .max(Comparator.comparingLong(rule -> rule.cost() - cost(other, rule.rule())))
        .map(RuleCost::name);
  }

  private static long cost(Plan plan, String rule) {
    return plan.rules().stream()
        .filter(cost -> cost.rule().equals(rule))
        .mapToLong(RuleCost::cost)
        .sum();
  }

  /** How many of a few shifts have help: a rest, or an open string under which the hand moves. */
  private Optional<String> shifts() {
    Plan plan = verdict.plan();
    List<PlannedNote> shifts = plan.notes().stream().filter(PlannedNote::shift).toList();
    if (shifts.isEmpty() || shifts.size() > FEW_SHIFTS) {
      return Optional.empty();
    }
    int helped = (int) shifts.stream().filter(note -> helped(plan, note)).count();
    String all =
        shifts.size() == 1 ? "The shift" : shifts.size() == 2 ? "Both shifts" : "All shifts";
    String verb = shifts.size() == 1 ? " comes" : " come";
    String help = " in a rest or after an open string.";
    if (helped == shifts.size()) {
      return Optional.of(all + verb + help);
    }
    return Optional.of(
        helped == 0
            ? (shifts.size() == 1 ? "The shift has" : "The shifts have")
                + " no rest or open string to help."
            : "Of %d shifts, %d %s%s"
                .formatted(shifts.size(), helped, helped == 1 ? "comes" : "come", help));
  }

  private static boolean helped(Plan plan, PlannedNote note) {
    Moment moment = plan.passage().moments().get(note.moment());
    return moment.restMicros() > 0
        || (note.moment() > 0 && plan.grips().get(note.moment() - 1).open());
  }

  private String tempo() {
    ComfortableTempo own = ComfortableTempo.of(verdict.plan(), speed);
    if (own.tempo().isEmpty()) {
      return "It is comfortable at any tempo.";
    }
    if (own.wellAbove()) {
      return "It is comfortable " + TempoText.wellAbove(own.marked()) + ".";
    }
    StringBuilder text = new StringBuilder("Comfortable up to ");
    text.append(TempoText.mark(own.tempo().get()));
    List<ComfortableTempo> all =
        comparison.plans().stream().map(plan -> ComfortableTempo.of(plan, speed)).toList();
    boolean alike =
        all.size() > 1 && all.stream().allMatch(tempo -> tempo.tempo().equals(own.tempo()));
    if (alike) {
      text.append(" with every plan");
    }
    text.append(" (");
    if (!alike) {
      verdict
          .rival()
          .flatMap(rival -> otherTempo(rival, own))
          .ifPresent(other -> text.append(other).append("; "));
    }
    text.append("planned: ").append(own.marked().perMinute().toPlainString()).append(")");
    own.tightestDistinct(1).stream()
        .findFirst()
        .ifPresent(
            limit -> {
              boolean run = limit.first().measureIndex() != limit.last().measureIndex();
              text.append(run ? "; measures " : "; measure ");
              text.append(limit.measures())
                  .append(
                      Movements.of(comparison.passage().measures())
                          .phrase(limit.last().measureIndex()))
                  .append(run ? " set" : " sets")
                  .append(" the limit");
            });
    text.append('.');
    if (own.exceeded()) {
      text.append(" Raise the tempo in small steps.");
    }
    return text.toString();
  }

  /** The comfortable tempo of the rival, if it differs: {@code 1st position: 96}. */
  private Optional<String> otherTempo(Plan rival, ComfortableTempo own) {
    ComfortableTempo tempo = ComfortableTempo.of(rival, speed);
    return tempo
        .tempo()
        .filter(mark -> !tempo.wellAbove() && !Optional.of(mark).equals(own.tempo()))
        .map(mark -> rival.name() + ": " + mark.perMinute().toPlainString());
  }

  static String figures(PlanFigures figures) {
    return counted(figures, PlanFigure.SHIFTS)
        + ", "
        + counted(figures, PlanFigure.CROSSINGS)
        + " and "
        + counted(figures, PlanFigure.FOURTH_FINGERS);
  }

  private static String more(List<String> counts) {
    return joined(counts.stream().map(count -> count.replaceFirst(" ", " more ")).toList());
  }

  private static String joined(List<String> counts) {
    int last = counts.size() - 1;
    return last < 1
        ? String.join("", counts)
        : String.join(", ", counts.subList(0, last)) + " and " + counts.get(last);
  }

  private static String counted(PlanFigures figures, PlanFigure figure) {
    int number = figures.count(figure);
    return number == 0 ? "no " + figure.noun(number) : figure.counted(number);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
