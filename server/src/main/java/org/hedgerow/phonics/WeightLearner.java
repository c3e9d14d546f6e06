package org.hedgerow.phonics;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Learns how often each realisation is used, from a dictionary without alignments, by
 * expectation–maximisation: every word's possible alignments are weighed by the shares learned so
 * far (forward–backward over its {@link Lattice}), and the shares are counted again from those
 * weighed alignments [1]. The same dictionary always gives the same weights.
 *
 * <p>[1] A. P. Dempster, N. M. Laird and D. B. Rubin, "Maximum Likelihood from Incomplete Data via
 * the EM Algorithm", J. Royal Statistical Society B 39, 1977; for letters and sounds: R. I. Damper
 * et al., "Aligning Text and Phonemes for Speech Technology Applications Using an EM-Like
 * Algorithm", Int. J. Speech Technology 8, 2005.
 */
public final class WeightLearner {

  /** Interpolation weight between a correspondence and its realisations. */
  private static final double SHARED = 0.2;

  /** Additive smoothing, so that unseen realisations keep some probability. */
  private static final double SMOOTHING = 0.2;

  private final AccentCatalogue unweighted;
  private final CompiledCatalogue catalogue;
  private final List<Lattice> lattices = new ArrayList<>();

  public WeightLearner(AccentCatalogue unweighted) {
    this.unweighted = unweighted;
    this.catalogue = new CompiledCatalogue(unweighted);
  }

  /** Adds a word with one of its pronunciations; ignored if it cannot be aligned. */
  public void add(String spelling, List<Sound> sounds) {
    Lattice lattice = new Lattice(catalogue, spelling, catalogue.indexes(sounds));
    if (lattice.ends().length > 0) {
      lattices.add(lattice);
    }
  }

  /** How many pronunciations take part. */
  public int size() {
    return lattices.size();
  }

  /**
   * @param rounds how often the shares are counted again; they settle within ten
   * @return the catalogue with a cost for each realisation
   */
  public AccentCatalogue learn(int rounds) {
    double[] shares = new double[catalogue.size()];
    Arrays.fill(shares, 1.0 / shares.length);
    for (int round = 0; round < rounds; round++) {
      shares = recount(shares);
    }
    double[] learned = shares;
    return unweighted.weighted(realisation -> -Math.log(learned[realisation.id()]));
  }

  private double[] recount(double[] shares) {
    double[] counts = new double[shares.length];
    Arrays.fill(counts, SMOOTHING);
    lattices.forEach(lattice -> count(lattice, shares, counts));
    shareWithinCorrespondences(counts);
    double total = Arrays.stream(counts).sum();
    for (int index = 0; index < counts.length; index++) {
      counts[index] *= preference(unweighted.realisations().get(index)) / total;
    }
    return counts;
  }

  /** A way of saying that few words have is as good a reading as the usual way. */
  private void shareWithinCorrespondences(double[] counts) {
    Map<Correspondence, List<Integer>> ways =
        IntStream.range(0, counts.length)
            .boxed()
            .collect(groupingBy(index -> unweighted.realisations().get(index).correspondence()));
    for (List<Integer> indexes : ways.values()) {
      double mean = indexes.stream().mapToDouble(index -> counts[index]).average().orElseThrow();
      indexes.forEach(index -> counts[index] = (1 - SHARED) * counts[index] + SHARED * mean);
    }
  }

  /**
   * What the dictionary cannot teach: an ending is one grapheme although its letters also say its
   * sounds one by one, and a letter is called silent only where no grapheme holds it.
   */
  private static double ending(Realisation realisation) {
    int letters = realisation.grapheme().letterCount();
    if (letters > 1) {
      return 25;
    }
    return letters < realisation.sounds().size() ? 0.1 : 1;
  }

  private static double preference(Realisation realisation) {
    return switch (realisation.correspondence().kind()) {
      case ENDING -> ending(realisation);
      case SILENT -> realisation.grapheme().text().equals("e") ? 0.3 : 0.05;
      case BASIC, DOUBLED, PHONOGRAM, IRREGULAR -> 1;
    };
  }

  private static void count(Lattice lattice, double[] shares, double[] counts) {
    double[] forward = forward(lattice, shares);
    double[] backward = backward(lattice, shares);
    double all = backward[lattice.start()];
    for (int edge = 0; edge < lattice.edgeCount(); edge++) {
      int realisation = lattice.realisation(edge);
      if (realisation != Lattice.CLOSING) {
        counts[realisation] +=
            forward[lattice.from(edge)] * shares[realisation] * backward[lattice.to(edge)] / all;
      }
    }
  }

  private static double[] forward(Lattice lattice, double[] shares) {
    double[] forward = new double[lattice.nodeCount()];
    forward[lattice.start()] = 1;
    for (int edge = 0; edge < lattice.edgeCount(); edge++) {
      forward[lattice.to(edge)] += forward[lattice.from(edge)] * share(lattice, edge, shares);
    }
    return forward;
  }

  private static double[] backward(Lattice lattice, double[] shares) {
    double[] backward = new double[lattice.nodeCount()];
    for (int end : lattice.ends()) {
      backward[end] = 1;
    }
    for (int edge = lattice.edgeCount() - 1; edge >= 0; edge--) {
      backward[lattice.from(edge)] += backward[lattice.to(edge)] * share(lattice, edge, shares);
    }
    return backward;
  }

  private static double share(Lattice lattice, int edge, double[] shares) {
    int realisation = lattice.realisation(edge);
    return realisation == Lattice.CLOSING ? 1 : shares[realisation];
  }
}
