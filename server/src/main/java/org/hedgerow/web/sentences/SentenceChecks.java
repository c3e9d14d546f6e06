package org.hedgerow.web.sentences;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.TargetLetters;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.query.ValidationErrors;

/** {@code POST /sentence-checks}: may this sentence be put before a child? */
final class SentenceChecks {

  private static final int MAX_LETTERS = 2000;

  private SentenceChecks() {}

  /** The sentence judged. */
  record View(
      int edition, SentenceQuery query, String text, @JsonUnwrapped SentenceCheckView check) {}

  /**
   * @throws org.hedgerow.web.query.InvalidQueryException with all that is wrong
   */
  static View answer(Lexicon lexicon, SentenceChecksBody body, ValidationErrors errors) {
    SentenceStandardBody.Read read = body.standard().read(lexicon, errors);
    String text = text(body, errors);
    errors.throwIfAny();
    SentenceStandard standard = read.standard();
    return new View(
        lexicon.edition(),
        read.query(),
        text,
        SentenceCheckView.of(
            new SentenceChecker(lexicon, standard).check(text), letters(lexicon, standard)));
  }

  static TargetLetters letters(Lexicon lexicon, SentenceStandard standard) {
    return new TargetLetters(lexicon, standard.standard(), standard.accents().get(0));
  }

  private static String text(SentenceChecksBody body, ValidationErrors errors) {
    String text = Optional.ofNullable(body.text()).orElse("");
    if (text.isBlank()) {
      errors.invalid("text", "There is no sentence to check. Send one in text.");
    }
    if (text.length() > MAX_LETTERS) {
      errors.add(
          ValidationError.of(
              ProblemType.TOO_MANY_WORDS,
              "text",
              "The text has %d letters. Send one sentence, at most %d letters."
                  .formatted(text.length(), MAX_LETTERS)));
    }
    return text;
  }
}
