package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;

/** Two short statements in one: <em>The goat ran and the toad hid.</em> */
final class JoinedStatements implements Pattern {

  private static final List<String> JOINTS = List.of("and", "and", "and", "but");

  private final ReadableWords pantry;
  private final Actions actions;
  private final SeededRandom chance;

  JoinedStatements(ReadableWords pantry, Actions actions, SeededRandom chance) {
    this.pantry = pantry;
    this.actions = actions;
    this.chance = chance;
  }

  @Override
  public Optional<Phrase> make() {
    return chance.among(JOINTS).flatMap(pantry.words()::word).flatMap(this::make);
  }

  private Optional<Phrase> make(PhraseWord joint) {
    return actions
        .told()
        .flatMap(first -> actions.told().map(second -> first.withComma().then(joint).then(second)));
  }
}
