package org.hedgerow.sentences.compose;

import java.util.Set;

/** Whether a thing of some size can be at a place: a toad in a box, but no cow. */
final class Capacity {

  private static final Set<String> HOLDING = Set.of("in", "into", "inside", "on", "onto", "up");
  private static final int LAND = 5;

  private Capacity() {}

  /**
   * @param size of what is there, from 0 to 6 as in {@link Noun#size}
   */
  static boolean isAt(String preposition, Noun landmark, int size) {
    if (landmark.size() >= LAND) {
      return true;
    }
    return HOLDING.contains(preposition) ? landmark.size() > size : landmark.size() >= size;
  }
}
