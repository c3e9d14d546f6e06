package org.hedgerow.web.review;

import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.Queue.Waiting;

/**
 * Something that waits for a decision.
 *
 * @param value that it serves most, in words; or an empty text
 * @param verdict {@code pass}, {@code look} or {@code fail}; empty for what the machine doesn't
 *     judge
 * @param own whether it is the reviewer's, who may not decide on it
 */
record QueueRow(
    int id,
    int revision,
    String kind,
    String subject,
    String value,
    String verdict,
    String author,
    Times since,
    boolean own) {

  static QueueRow of(Waiting waiting, Lexicon lexicon) {
    Contribution contribution = waiting.contribution();
    return new QueueRow(
        contribution.id(),
        contribution.revision(),
        KindForm.of(contribution.kind()).title(),
        contribution.proposal().subject(),
        waiting.place().value().isEmpty()
            ? ""
            : new ValueOptions(lexicon).words(waiting.place().value()),
        isJudged(contribution.kind())
            ? DraftVerdictMaker.verdict(contribution.kind(), contribution.remarks()).label()
            : "",
        contribution.author().name(),
        Times.of(contribution.submitted().orElse(contribution.changed())),
        waiting.place().own());
  }

  static boolean isJudged(ContributionKind kind) {
    return kind != ContributionKind.WITHDRAWAL;
  }

  String verdictWords() {
    return switch (verdict) {
      case "pass" -> "Passes";
      case "look" -> "Needs a look";
      default -> "Doesn’t pass";
    };
  }
}
