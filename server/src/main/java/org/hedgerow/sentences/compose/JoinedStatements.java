package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;

/** Two short statements in one: <em>The goat ran and the toad hid.</em> */
final class JoinedStatements implements Pattern {

  private static final List<String> JOINTS = List.of("and", "and", "and", "but");

  private final ReadableWords readable;
  private final Actions actions;
  private final SeededRandom random;

  JoinedStatements(ReadableWords readable, Actions actions, SeededRandom random) {
    this.readable = readable;
    this.actions = actions;
    this.random = random;
  }

  @Override
  public Optional<Phrase> make() {
    return random.among(JOINTS).flatMap(readable.words()::word).flatMap(this::make);
  }

  private Optional<Phrase> make(PhraseWord joint) {
    return actions
        .told()
        .flatMap(first -> actions.told().map(second -> first.withComma().then(joint).then(second)));
  }
}
