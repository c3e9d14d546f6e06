package org.hedgerow.web.review;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Content;
import org.hedgerow.review.Proposal;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.ValidationErrors;
import org.jspecify.annotations.Nullable;

/**
 * What is said around a proposal.
 *
 * @param wantedFor as in {@code oa 1}, or an empty text
 */
record ProposalContext(String wantedFor, String note) {
  private static final int MAX_NOTE_LENGTH = 2_000;
  private static final Pattern VALUE =
      Pattern.compile("([a-z]{1,8}|[a-z]-e)(?:[ -]?([1-9][0-9]?))?");

  static ProposalContext read(
      Lexicon lexicon,
      @Nullable String wantedFor,
      String wantedForField,
      @Nullable String note,
      String noteField,
      ValidationErrors errors) {
    return new ProposalContext(
        wantedFor == null || wantedFor.isBlank()
            ? ""
            : value(lexicon, wantedFor.strip(), wantedForField, errors),
        note == null ? "" : note(note.strip(), noteField, errors));
  }

  Content around(Proposal proposal) {
    return new Content(proposal, wantedFor, note);
  }

  private static String value(Lexicon lexicon, String text, String field, ValidationErrors errors) {
    Optional<String> label =
        label(text)
            .filter(
                wanted ->
                    lexicon.catalogue().correspondences().stream()
                        .anyMatch(each -> each.isTaught() && each.label().equals(wanted)));
    if (label.isEmpty()) {
      errors.invalid(
          field,
          "%s is no value of a phonogram: %s. Write the phonogram and the number, as in oa 1."
              .formatted(field, Quoted.of(text)));
    }
    return label.orElse("");
  }

  /** As in {@code oa 1}, from {@code oa}, {@code oa1}, {@code oa-1} or {@code oa 1}. */
  static Optional<String> label(String text) {
    Matcher parts = VALUE.matcher(text);
    return parts.matches()
        ? Optional.of(parts.group(1) + " " + Optional.ofNullable(parts.group(2)).orElse("1"))
        : Optional.empty();
  }

  private static String note(String note, String field, ValidationErrors errors) {
    if (note.length() > MAX_NOTE_LENGTH) {
      errors.invalid(
          field,
          "%s has %d characters; at most %d are kept."
              .formatted(field, note.length(), MAX_NOTE_LENGTH));
      return "";
    }
    return note;
  }
}
