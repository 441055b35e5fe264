import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.scoring.rules.StandardRules;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import java.nio.file.Path;

/** Compares the plan in first position with the plan that is partly in third. */
class CompareFirstAndThird {
  public static void main(String[] arguments) {
    Passage passage =
        ScoreReader.read(ScoreFile.read(Path.of(arguments[0]))).passage(PassageRequest.WHOLE);
    PlanComparer comparer =
        PlanComparer.of(passage, StandardRules.commonPractice(), LeftHand.SMALL, ImmutableSet.of());

    print(comparer.firstPositionPlan());
    // Empty if no note can be played in third position.
    comparer.partlyUpperPlan().ifPresent(CompareFirstAndThird::print);
  }

  private static void print(Plan plan) {
    System.out.printf("%s: %d points%n", plan.name(), plan.total());
    System.out.printf(
        "  shifts %d, crossings %d, fourth fingers %d%n",
        plan.shifts(), plan.crossings(), plan.fourthFingers());
    ComfortableTempo.of(plan, PlayerSpeed.named("intermediate"))
        .tempo()
        .ifPresent(tempo -> System.out.printf("  comfortable up to %s%n", tempo));
  }
}
