package fingering.tempo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Real quartets at their marked tempi are comfortable for a professional, except for a few
 * measures, because they are meant to be played at these tempi. If a score has no tempo, the
 * program uses its default. The scores are not part of the project; {@code -Dquartets=FOLDER} names
 * a folder of compressed MusicXML, and {@code mvn -pl fingering-core -am test
 * -Dtest=QuartetTempoTest -Dsurefire.failIfNoSpecifiedTests=false} runs it alone.
 */
class QuartetTempoTest {
  private static final String FOLDER = "quartets";
  private static final double MOST = 0.02;

  /** The measures with notes, and those marked above the comfortable tempo. */
  private static final class Tally {
    private int measures;
    private int above;

    double share() {
      return (double) above / measures;
    }
  }

  @Test
  void fewMeasuresOfRealQuartetsAreMarkedAboveTheComfortableTempo() throws IOException {
    String folder = System.getProperty(FOLDER, "");
    assumeTrue(
        !folder.isEmpty(), "skipped: give a folder of quartets in MusicXML with -Dquartets=FOLDER");
    Map<String, Tally> tallies = new TreeMap<>();
    List<String> above = new ArrayList<>();
    for (Path file : scores(Path.of(folder))) {
      Score score = ScoreReader.read(ScoreFile.read(file));
      for (PartInfo part : score.parts()) {
        measure(file, score, part, tallies, above);
      }
    }
    above.forEach(System.out::println);
    tallies.forEach(
        (instrument, tally) ->
            System.out.printf(
                "%s: %d of %d measures, %.2f %%%n",
                instrument, tally.above, tally.measures, 100 * tally.share()));
    assertThat(tallies).isNotEmpty();
    assertThat(tallies.values()).allSatisfy(t -> assertThat(t.share()).isLessThanOrEqualTo(MOST));
  }

  private static List<Path> scores(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".mxl")).sorted().toList();
    }
  }

  private static void measure(
      Path file, Score score, PartInfo part, Map<String, Tally> tallies, List<String> above) {
    Passage passage = score.passage(PassageRequest.WHOLE.withPart(Integer.toString(part.number())));
    Scoring professional = Scoring.of(StandardRules.all(), Weights.preset("advanced"));
    Plan plan = Planner.of(passage, professional).plan(Brief.free("free"));
    ComfortableTempo tempo = ComfortableTempo.of(plan, PlayerSpeed.named("advanced"));
    Tally tally = tallies.computeIfAbsent(passage.instrument().id(), id -> new Tally());
    tally.measures +=
        (int) passage.moments().stream().map(m -> m.place().measureIndex()).distinct().count();
    for (TempoLimit limit : tempo.byMeasure()) {
      if (limit.factor() < 1) {
        tally.above++;
        above.add(
            "%s %s %s %s %.2f %s"
                .formatted(
                    file.getFileName(),
                    part.name(),
                    limit.place(),
                    limit.marked(),
                    limit.factor(),
                    limit.text()));
      }
    }
  }
}
