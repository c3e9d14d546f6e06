package org.hedgerow.sentences.compose;

import java.util.Set;

/** How well two nouns go together in one sentence. */
enum NounAffinity {
  /** A goat and a pig, but neither a goat and a loaf nor a jar and a pen. */
  CLOSE {
    @Override
    boolean between(Noun one, Noun other) {
      return one.kind().equals(other.kind())
          && KINDS.contains(one.kind())
          && Math.abs(one.size() - other.size()) <= STEP;
    }
  },
  /** A jar and a pen too; for where few words hold the phonogram. */
  DISTANT {
    @Override
    boolean between(Noun one, Noun other) {
      return one.classes().stream().anyMatch(name -> !TOO_WIDE.contains(name) && other.is(name));
    }
  };

  /** The kinds of which any two go together. */
  private static final Set<String> KINDS =
      Set.of(
          "person",
          "kin",
          "royal",
          "pet",
          "beast",
          "bird",
          "fish",
          "bug",
          "food",
          "fruit",
          "sweet",
          "garment",
          "boat",
          "car",
          "flower",
          "tree",
          "instrument");

  private static final Set<String> TOO_WIDE =
      Set.of("living", "place", "climber", "swimmer", "flier");

  /** How much bigger one may be. */
  private static final int STEP = 1;

  abstract boolean between(Noun one, Noun other);
}
