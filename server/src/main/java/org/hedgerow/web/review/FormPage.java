package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.review.ContributionKind;

/**
 * A contribution that is being written.
 *
 * @param id 0 while nothing has been kept yet
 * @param known whether the bank holds the word
 * @param ways those of the bank's pronunciations that can be put right
 * @param returned what the reviewer said who returned it; empty if nobody did
 * @param returnedBy who that was
 * @param elsewhere what differs from what was saved elsewhere meanwhile
 * @param news what was just done
 */
record FormPage(
    String token,
    int id,
    int revision,
    ContributionKind kind,
    String spelling,
    boolean known,
    List<PronunciationFields> sayings,
    List<Option> ways,
    boolean instead,
    Optional<LabelsView> labels,
    Optional<PictureFields> picture,
    Optional<SentenceView> sentence,
    String withdrawnSentence,
    String reason,
    List<Option> wantedFor,
    String note,
    DraftVerdict side,
    String returned,
    String returnedBy,
    List<Difference> elsewhere,
    FieldErrors errors,
    String news,
    boolean discardable) {

  String title() {
    return ReviewWording.of(kind);
  }

  String help() {
    return ReviewWording.help(kind);
  }

  boolean isOfWord() {
    return kind != ContributionKind.SENTENCE;
  }

  boolean canAddAccents() {
    return kind == ContributionKind.WORD && sayings.size() < ProposedPronunciationReader.MAX;
  }

  /** Blocks of letters and sounds can only be shown of a word. */
  boolean showsSayings() {
    return !sayings.isEmpty()
        && spelling.matches("[a-z]{1,40}")
        && (kind == ContributionKind.WORD || known);
  }

  /** A picture serves whatever its word serves. */
  boolean isWantedForSomething() {
    return switch (kind) {
      case WORD, PRONUNCIATION, ALIGNMENT, TAGS -> true;
      case PICTURE, SENTENCE, WITHDRAWAL -> false;
    };
  }

  String spellingError() {
    return errors.at("spelling");
  }
}
