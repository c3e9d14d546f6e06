package org.hedgerow.web.sentences;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.TargetLetters;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Fault;
import org.hedgerow.web.query.Faults;

/** {@code POST /sentence-checks}: may this sentence be put before a child? */
final class SentenceChecks {

  private static final int MOST_LETTERS = 2000;

  private SentenceChecks() {}

  /** The sentence judged. */
  record View(
      int edition, SentenceQuery query, String text, @JsonUnwrapped SentenceCheckView check) {}

  /**
   * @throws org.hedgerow.web.query.InvalidQueryException with all that is wrong
   */
  static View answer(Lexicon lexicon, SentenceChecksBody body, Faults faults) {
    SentenceStandardBody.Read read = body.standard().read(lexicon, faults);
    String text = text(body, faults);
    faults.throwIfAny();
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

  private static String text(SentenceChecksBody body, Faults faults) {
    String text = Optional.ofNullable(body.text()).orElse("");
    if (text.isBlank()) {
      faults.invalid("text", "There is no sentence to check. Send one in text.");
    }
    if (text.length() > MOST_LETTERS) {
      faults.add(
          Fault.of(
              ProblemType.TOO_MANY_WORDS,
              "text",
              "The text has %d letters. Send one sentence, at most %d letters."
                  .formatted(text.length(), MOST_LETTERS)));
    }
    return text;
  }
}
