package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * One way in which an accent says a correspondence.
 *
 * @param id its place among the realisations of the accent
 * @param sounds the sounds; empty when silent
 * @param cost minus the natural logarithm of its share among all spans of the dictionary, so that
 *     the likeliest alignment is the one with the least sum of costs
 */
public record Realisation(int id, Correspondence correspondence, List<Sound> sounds, double cost) {

  public Realisation {
    requireNonNull(correspondence);
    sounds = List.copyOf(sounds);
  }

  public Grapheme grapheme() {
    return correspondence.grapheme();
  }

  public boolean isSilent() {
    return sounds.isEmpty();
  }

  Realisation withCost(double newCost) {
    return new Realisation(id, correspondence, sounds, newCost);
  }

  @Override
  public String toString() {
    return grapheme() + ":" + Sound.joined(sounds);
  }
}
