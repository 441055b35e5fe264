package fingering.bench;

import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.plan.PlannerFactory;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.audiveris.proxymusic.util.Marshalling;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One part read from its file by the XML binding, and planned. */
@State(Scope.Benchmark)
public class ReadingAndPlanning {
  /** An uncompressed score with one part. */
  @Param("")
  public String score;

  @Param({"common-practice", "advanced"})
  public String preset;

  private byte[] bytes = new byte[0];
  private Passage passage;
  private Scoring scoring;
  private PlannerFactory planners;

  /** Reads the score once. */
  @Setup
  public void read() throws IOException {
    Path file = Path.of(score);
    bytes = Files.readAllBytes(file);
    passage = ScoreReader.read(ScoreFile.read(file)).passage(PassageRequest.WHOLE);
    scoring = Scoring.of(StandardRules.all(), Weights.preset(preset));
    planners = new PlannerFactory(scoring, LeftHand.MEDIUM);
  }

  /** Reads the file into the classes of the binding only. */
  @Benchmark
  public Object reading() throws Marshalling.UnmarshallingException {
    return Marshalling.unmarshal(new ByteArrayInputStream(bytes));
  }

  /** Finds every grip and the best plan, with planners that have cached these notes. */
  @Benchmark
  public Plan planning() {
    return planners.of(passage).plan(Brief.free("free"));
  }

  /** The same with a planner whose caches are empty. */
  @Benchmark
  public Plan planningAfresh() {
    return Planner.of(passage, scoring).plan(Brief.free("free"));
  }
}
