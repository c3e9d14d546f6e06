package org.hedgerow.phonics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Aligns the letters of a word to its sounds: the likeliest path over the catalogue's
 * correspondences, by dynamic programming that keeps the two best paths into every node [1], with
 * weights learned from the dictionary ({@link WeightLearner}).
 *
 * <p>Thread-safe. The number of steps grows with letters × sounds; a word of ten letters takes some
 * ten microseconds.
 *
 * <p>[1] For the k best paths of a lattice: Y.-L. Chow and R. Schwartz, "The N-Best Algorithm",
 * Proc. DARPA Speech and Natural Language Workshop, 1989.
 */
public final class Aligner {

  private final CompiledCatalogue catalogue;
  private final double[] costs;
  private final SpanPool pool;

  public Aligner(AccentCatalogue catalogue) {
    this.catalogue = new CompiledCatalogue(catalogue);
    this.costs = catalogue.realisations().stream().mapToDouble(Realisation::cost).toArray();
    this.pool = new SpanPool(catalogue.realisations());
  }

  /** The accent whose sounds this aligner knows. */
  public Accent accent() {
    return catalogue.source().accent();
  }

  public AccentCatalogue catalogue() {
    return catalogue.source();
  }

  /**
   * The best alignment, or empty if the catalogue cannot explain the word; see {@link #obstacle}.
   *
   * @param spelling letters a to z
   * @param sounds a pronunciation in the accent's inventory
   */
  public Optional<Alignment> align(String spelling, List<Sound> sounds) {
    Lattice lattice = new Lattice(catalogue, spelling, catalogue.indexes(sounds));
    TwoBestPaths paths = new TwoBestPaths(lattice, costs);
    if (!paths.exist()) {
      return Optional.empty();
    }
    return Optional.of(new Alignment(pool.spans(lattice, paths.best()), paths.margin()));
  }

  /**
   * Why a word cannot be aligned, for a teacher: where the letters or sounds stop being explained.
   */
  public String obstacle(String spelling, List<Sound> sounds) {
    Lattice lattice = new Lattice(catalogue, spelling, catalogue.indexes(sounds));
    int letter = lattice.furthestLetter();
    int sound = Math.min(lattice.furthestSound(), sounds.size());
    return "no known spelling joins the letters \"%s\" to the sounds /%s/"
        .formatted(spelling.substring(letter), Sound.spaced(sounds.subList(sound, sounds.size())));
  }

  /** The two cheapest paths through a lattice. */
  private static final class TwoBestPaths {

    private final Lattice lattice;
    private final double[] best;
    private final double[] second;
    private final int[] bestEdge;
    private int end = -1;
    private double margin = Double.POSITIVE_INFINITY;

    TwoBestPaths(Lattice lattice, double[] costs) {
      this.lattice = lattice;
      int nodes = lattice.nodeCount();
      best = new double[nodes];
      second = new double[nodes];
      bestEdge = new int[nodes];
      Arrays.fill(best, Double.POSITIVE_INFINITY);
      Arrays.fill(second, Double.POSITIVE_INFINITY);
      best[lattice.start()] = 0;
      for (int edge = 0; edge < lattice.edgeCount(); edge++) {
        int realisation = lattice.realisation(edge);
        double step = realisation == Lattice.CLOSING ? 0 : costs[realisation];
        offer(edge, best[lattice.from(edge)] + step);
        offer(edge, second[lattice.from(edge)] + step);
      }
      chooseEnd();
    }

    private void offer(int edge, double cost) {
      int node = lattice.to(edge);
      if (cost < best[node]) {
        second[node] = best[node];
        best[node] = cost;
        bestEdge[node] = edge;
      } else if (cost < second[node]) {
        second[node] = cost;
      }
    }

    private void chooseEnd() {
      double least = Double.POSITIVE_INFINITY;
      double next = Double.POSITIVE_INFINITY;
      for (int node : lattice.ends()) {
        if (best[node] < least) {
          next = Math.min(least, second[node]);
          least = best[node];
          end = node;
        } else {
          next = Math.min(next, best[node]);
        }
      }
      margin = next - least;
    }

    boolean exist() {
      return end >= 0;
    }

    double margin() {
      return margin;
    }

    /** The edges of the cheapest path, first to last. */
    int[] best() {
      int[] edges = new int[lattice.edgeCount()];
      int start = edges.length;
      int node = end;
      while (node != lattice.start()) {
        edges[--start] = bestEdge[node];
        node = lattice.from(bestEdge[node]);
      }
      return Arrays.copyOfRange(edges, start, edges.length);
    }
  }
}
