import com.google.common.collect.ImmutableSet;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.marks.PlanMarks;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import java.nio.file.Path;

/** Plans some measures in three positions and writes the plan into a copy of the score. */
class PlanPassage {
  public static void main(String[] arguments) {
    ScoreFile file = ScoreFile.read(Path.of(arguments[0]));
    PassageRequest request =
        PassageRequest.WHOLE.withMeasures(arguments[1]).withTempo(Tempo.parse("quarter=80"));
    Passage passage = ScoreReader.read(file).passage(request);

    Planner planner = Planner.of(passage, StandardRules.commonPractice());
    ImmutableSet<Position> allowed =
        ImmutableSet.of(Position.FIRST, Position.SECOND, Position.THIRD);
    Plan plan = planner.plan(Brief.within("up to 3rd", allowed));

    System.out.printf("%s, %s, at %s%n", passage.title(), passage.partName(), passage.tempo());
    plan.rules().forEach(rule -> System.out.printf("%4d  %s%n", rule.cost(), rule.name()));
    System.out.printf("%4d  points for %d notes%n", plan.total(), plan.notes().size());

    if (arguments.length > 2) {
      // An existing file is not overwritten.
      file.writeMarked(ScoreMarker.mark(file.text(), PlanMarks.of(plan)), Path.of(arguments[2]));
    }
  }
}
