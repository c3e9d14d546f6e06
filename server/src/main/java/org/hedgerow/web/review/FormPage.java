package org.hedgerow.web.review;

import java.util.List;
import org.hedgerow.review.ContributionKind;

/**
 * A contribution that is being written.
 *
 * @param wantedFor the phonogram values, as options
 * @param side what stands beside the form
 */
record FormPage(
    String token,
    ContributionKind kind,
    DraftStatus status,
    ProposalFields fields,
    List<Option> wantedFor,
    String note,
    DraftVerdict side,
    FieldErrors errors) {

  String title() {
    return KindForm.of(kind).title();
  }

  String help() {
    return KindForm.of(kind).help();
  }

  int id() {
    return status.draft().id();
  }

  boolean asksForValue() {
    return KindForm.of(kind).asksForValue();
  }

  /** A new word is one that the bank doesn't hold; everything else is about one that it holds. */
  boolean needsNewWord() {
    return kind == ContributionKind.WORD;
  }

  /** Blocks of letters and sounds can only be shown of a word. */
  boolean showsSpoken() {
    return fields.spoken().isPresent()
        && fields.spelling().matches("[a-z]{1,40}")
        && (needsNewWord() || fields.known());
  }

  String spellingError() {
    return errors.at("spelling");
  }
}
