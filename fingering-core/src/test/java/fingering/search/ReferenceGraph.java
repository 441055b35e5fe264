package fingering.search;

import java.util.List;
import java.util.stream.IntStream;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.alg.shortestpath.YenShortestPathIterator;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * A layered graph as a graph of JGraphT: a vertex for each grip of each moment, {@code
 * moment/grip}, between a source and a sink. Costs are whole numbers far below 2^53, so doubles
 * hold them exactly.
 */
final class ReferenceGraph {
  private final LayeredGraph layers;
  private final RuleCosts costs;
  private final Graph<String, DefaultWeightedEdge> graph =
      new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);

  private ReferenceGraph(LayeredGraph layers) {
    this.layers = layers;
    costs = new RuleCosts(layers);
  }

  static ReferenceGraph of(LayeredGraph layers) {
    ReferenceGraph made = new ReferenceGraph(layers);
    made.graph.addVertex("source");
    made.graph.addVertex("sink");
    int last = layers.moments().size() - 1;
    for (int m = 0; m <= last; m++) {
      for (int j = 0; j < layers.grips().get(m).size(); j++) {
        made.graph.addVertex(m + "/" + j);
        made.join(m, j);
        if (m == last) {
          made.edge(m + "/" + j, "sink", 0);
        }
      }
    }
    return made;
  }

  /** Adds the edges that lead to a grip. */
  private void join(int m, int j) {
    if (m == 0) {
      edge("source", "0/" + j, costs.grip(0, j));
      return;
    }
    for (int i = 0; i < layers.grips().get(m - 1).size(); i++) {
      edge((m - 1) + "/" + i, m + "/" + j, costs.grip(m, j) + costs.edge(m, i, j));
    }
  }

  private void edge(String from, String to, long cost) {
    graph.setEdgeWeight(graph.addEdge(from, to), (double) cost);
  }

  /** The cost of the cheapest path. */
  long cheapest() {
    return (long) new DijkstraShortestPath<>(graph).getPathWeight("source", "sink");
  }

  /**
   * The loopless paths, cheapest first, by Yen's algorithm; Eppstein's in JGraphT 1.5.2 misses some
   * paths of these graphs.
   */
  YenShortestPathIterator<String, DefaultWeightedEdge> paths() {
    return new YenShortestPathIterator<>(graph, "source", "sink");
  }

  /** The visible fingering of a path. */
  List<String> seen(GraphPath<String, DefaultWeightedEdge> path) {
    List<String> inner = path.getVertexList().subList(1, path.getLength());
    return IntStream.range(0, inner.size())
        .mapToObj(m -> layers.grips().get(m).get(grip(inner.get(m))))
        .map(Seen::of)
        .toList();
  }

  private static int grip(String vertex) {
    return Integer.parseInt(vertex.substring(vertex.indexOf('/') + 1));
  }
}
