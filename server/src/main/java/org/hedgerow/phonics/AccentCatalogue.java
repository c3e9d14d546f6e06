package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The catalogue as one accent says it: every correspondence with each of its sounds there, and the
 * learned cost of each.
 */
public record AccentCatalogue(Accent accent, Catalogue catalogue, List<Realisation> realisations) {

  public AccentCatalogue {
    requireNonNull(accent);
    requireNonNull(catalogue);
    realisations = List.copyOf(realisations);
    for (int i = 0; i < realisations.size(); i++) {
      if (realisations.get(i).id() != i) {
        throw new IllegalArgumentException("realisation " + i + " is " + realisations.get(i));
      }
    }
  }

  /** Uniform costs: the starting point of expectation–maximisation. */
  public static AccentCatalogue unweighted(Accent accent, Catalogue catalogue) {
    List<Realisation> realisations = new ArrayList<>();
    for (Correspondence correspondence : catalogue.correspondences()) {
      for (List<Sound> sounds : correspondence.soundsIn(accent)) {
        realisations.add(new Realisation(realisations.size(), correspondence, sounds, 0));
      }
    }
    return new AccentCatalogue(accent, catalogue, realisations);
  }

  /** With a cost for each realisation. */
  public AccentCatalogue weighted(ToDoubleFunction<Realisation> cost) {
    return new AccentCatalogue(
        accent,
        catalogue,
        realisations.stream().map(each -> each.withCost(cost.applyAsDouble(each))).toList());
  }

  /** The realisation of a grapheme that says these sounds, if the catalogue has it. */
  public Optional<Realisation> find(Grapheme grapheme, List<Sound> sounds) {
    return realisations.stream()
        .filter(each -> each.grapheme().equals(grapheme) && each.sounds().equals(sounds))
        .findFirst();
  }
}
