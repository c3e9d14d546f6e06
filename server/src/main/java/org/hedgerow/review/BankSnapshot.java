package org.hedgerow.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.FieldError;

/**
 * The state of the bank that a proposal is judged against.
 *
 * @param lexicon an edition, for its accents and their correspondences
 * @param words a word as it stands now
 * @param sentences a sentence as it stands now
 * @param uploads a picture that somebody has sent
 */
public record BankSnapshot(
    Lexicon lexicon,
    Function<String, Optional<Word>> words,
    Function<String, Optional<Sentence>> sentences,
    Function<String, Optional<Upload>> uploads) {

  Optional<Word> word(String spelling) {
    return words.apply(spelling);
  }

  /** The word that a proposal wants to change, or the error that the bank doesn't hold it. */
  List<FieldError> missing(String spelling) {
    List<FieldError> errors = Spelling.errors(spelling);
    if (errors.isEmpty() && word(spelling).isEmpty()) {
      return List.of(
          new FieldError(
              "spelling",
              "The bank doesn’t hold “%s”. Propose it as a new word.".formatted(spelling)));
    }
    return errors;
  }
}
