package fingering.bench;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableLongArray;
import fingering.demand.ShowPosition;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransition;
import fingering.scoring.rules.StandardRules;
import fingering.search.CostCache;
import fingering.search.LayeredGraph;
import fingering.search.NodeFilter;
import fingering.search.Path;
import fingering.search.PathFinder;
import fingering.search.Penalty;
import fingering.search.Requirement;
import fingering.tables.Position;
import java.util.Optional;
import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The best path through the graph of a viola line, by the search and by a graph library. */
public class Searching {
  private Searching() {}

  private static Passage line(int notes) {
    RandomMusic random = new RandomMusic(notes);
    return Music.viola().notes(random.line(notes, 48, 76)); // C3 to E5
  }

  /** A graph with all costs cached. */
  @State(Scope.Benchmark)
  public static class Lattice {
    @Param({"1000"})
    public int notes;

    private LayeredGraph layers;
    private Planner planner = Planner.of(line(1), StandardRules.commonPractice());
    private final Brief free = Brief.free("free");
    private final Brief audition =
        Brief.builder("audition")
            .addDemand(new ShowPosition(Position.FIRST, 8))
            .addDemand(new ShowPosition(Position.SECOND, 8))
            .addDemand(new ShowPosition(Position.THIRD, 8))
            .build();
    private final Graph<Integer, DefaultWeightedEdge> graph =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);

    /**
     * Makes the layered graph, and the same graph for JGraphT: 0 the source, 1 the sink, then the
     * grips.
     */
    @Setup
    public void make() {
      Passage passage = line(notes);
      Scoring scoring = StandardRules.commonPractice();
      planner = Planner.of(passage, scoring);
      layers =
          new LayeredGraph(
              passage.moments(),
              planner.grips(),
              new CostCache(scoring),
              Penalty.NONE,
              NodeFilter.NONE);
      graph.addVertex(0);
      graph.addVertex(1);
      int before = 0;
      int now = 2;
      for (int m = 0; m < notes; m++) {
        join(scoring, m, before, now);
        before = now;
        now += layers.grips().get(m).size();
      }
      for (int vertex = before; vertex < now; vertex++) {
        graph.setEdgeWeight(graph.addEdge(vertex, 1), 0);
      }
    }

    private void join(Scoring scoring, int m, int before, int now) {
      ImmutableList<Grip> grips = layers.grips().get(m);
      ImmutableLongArray costs = scoring.costs(NoteContext.of(layers.moments().get(m)), grips);
      for (int j = 0; j < grips.size(); j++) {
        graph.addVertex(now + j);
        long own = costs.get(j);
        if (m == 0) {
          graph.setEdgeWeight(graph.addEdge(0, now + j), (double) own);
          continue;
        }
        TimedTransition transition =
            TimedTransition.between(layers.moments().get(m - 1), layers.moments().get(m));
        ImmutableList<Grip> left = layers.grips().get(m - 1);
        for (int i = 0; i < left.size(); i++) {
          long edge = scoring.cost(transition, left.get(i), grips.get(j));
          graph.setEdgeWeight(graph.addEdge(before + i, now + j), (double) (edge + own));
        }
      }
    }

    /** The search; its cost is that of the graph library. */
    @Benchmark
    public Optional<Path> search() {
      return PathFinder.best(layers, Requirement.NONE);
    }

    /** JGraphT's Dijkstra, without making the graph. */
    @Benchmark
    public double dijkstra() {
      return new DijkstraShortestPath<>(graph).getPath(0, 1).getWeight();
    }

    /** The cheapest unconstrained plan. */
    @Benchmark
    public Plan freePlan() {
      return planner.plan(free);
    }

    /** The cheapest plan with eight notes in each of three positions. */
    @Benchmark
    public Plan threeSkills() {
      return planner.plan(audition);
    }
  }

  /** Graphs of a thousand to a million notes. */
  @State(Scope.Benchmark)
  public static class Lengths {
    private static final int SHORTEST = 1_000;

    @Param({"1000", "10000", "100000", "1000000"})
    public int notes;

    private LayeredGraph layers;

    /** Makes the graph from the same music many times in succession. */
    @Setup
    public void make() {
      Passage passage = line(SHORTEST);
      Scoring scoring = StandardRules.commonPractice();
      ImmutableList<ImmutableList<Grip>> once = Planner.of(passage, scoring).grips();
      ImmutableList.Builder<Moment> moments = ImmutableList.builder();
      ImmutableList.Builder<ImmutableList<Grip>> grips = ImmutableList.builder();
      Moment last = passage.moments().get(SHORTEST - 1);
      long length = last.startMicros() + last.soundMicros();
      for (int i = 0; i < notes / SHORTEST; i++) {
        for (Moment moment : passage.moments()) {
          moments.add(later(moment, i * length));
        }
        grips.addAll(once);
      }
      layers =
          new LayeredGraph(
              moments.build(),
              grips.build(),
              new CostCache(scoring),
              Penalty.NONE,
              NodeFilter.NONE);
    }

    private static Moment later(Moment moment, long micros) {
      return moment.withTimes(
          moment.startMicros() + micros, moment.soundMicros(), moment.restMicros());
    }

    /** The search. */
    @Benchmark
    public Optional<Path> searchOfLength() {
      return PathFinder.best(layers, Requirement.NONE);
    }
  }
}
