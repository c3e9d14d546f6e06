package org.hedgerow.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Word;

/**
 * The bank that a proposal builds on.
 *
 * @param lexicon an edition, for its accents and their correspondences
 * @param words a word as it stands now
 * @param sentences a sentence as it stands now
 * @param uploads a picture that somebody has sent
 */
public record Basis(
    Lexicon lexicon,
    Function<String, Optional<Word>> words,
    Function<String, Optional<Sentence>> sentences,
    Function<String, Optional<Upload>> uploads) {

  Optional<Word> word(String spelling) {
    return words.apply(spelling);
  }

  /** The word that a proposal wants to change, or the fault that the bank doesn't hold it. */
  List<FieldFault> missing(String spelling) {
    List<FieldFault> faults = Spelling.faults(spelling);
    if (faults.isEmpty() && word(spelling).isEmpty()) {
      return List.of(
          new FieldFault(
              "spelling",
              "The bank doesn’t hold “%s”. Propose it as a new word.".formatted(spelling)));
    }
    return faults;
  }
}
