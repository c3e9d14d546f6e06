package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.BankSnapshot;
import org.hedgerow.review.Change;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Reviews;

/** What the bank would say otherwise if a contribution were approved. */
record Effect(Reviews reviews, Lexicon lexicon) {

  /**
   * @param contribution without errors on the bank as it is
   */
  List<Difference> of(Actor actor, Contribution contribution) {
    BankSnapshot basis =
        new BankSnapshot(
            lexicon, lexicon::word, text -> Optional.empty(), id -> reviews.upload(actor, id));
    Change change = contribution.proposal().change(basis, "contribution " + contribution.id());
    WordFacts facts = new WordFacts(lexicon);
    List<Difference> differences = new ArrayList<>();
    for (Word word : change.words()) {
      differences.addAll(
          Differences.between(
              facts.of(lexicon.word(word.spelling())), facts.of(Optional.of(word))));
    }
    for (String spelling : change.withdrawnWords()) {
      differences.addAll(Differences.between(facts.of(lexicon.word(spelling)), List.of()));
    }
    change
        .sentences()
        .forEach(sentence -> differences.add(new Difference("Sentence", "", sentence.text())));
    change
        .withdrawnSentences()
        .forEach(text -> differences.add(new Difference("Sentence", text, "")));
    return differences;
  }
}
