package org.hedgerow.sentences.compose;

import java.util.Set;

/** Whether two nouns are told in one breath: a goat and a toad, but not a goat and a loaf. */
final class Kinship {

  /** Classes so wide that they make nobody alike. */
  private static final Set<String> TOO_WIDE =
      Set.of("living", "thing", "place", "climber", "swimmer");

  private Kinship() {}

  static boolean between(Noun one, Noun other) {
    return one.classes().stream().anyMatch(name -> !TOO_WIDE.contains(name) && other.is(name));
  }
}
