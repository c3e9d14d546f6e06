package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Correspondence;

/**
 * What a contributor says: while it is a draft, anything may be missing.
 *
 * @param proposal what is to change
 * @param wantedFor the phonogram value that it is meant for, as in {@code oa 1}; or an empty text
 * @param note what else a reviewer should know; or an empty text
 */
public record Content(Proposal proposal, String wantedFor, String note) {
  private static final int MAX_NOTE_LENGTH = 2_000;

  public Content {
    wantedFor = Given.text(wantedFor);
    note = Given.text(note);
  }

  /** What is missing or wrong, so that it can't be submitted or approved; empty if nothing. */
  List<FieldError> errors(BankSnapshot snapshot) {
    List<FieldError> errors = new ArrayList<>(proposal.errors(snapshot));
    if (!wantedFor.isEmpty() && target(snapshot.lexicon()).isEmpty()) {
      errors.add(
          new FieldError(
              "wantedFor", "“%s” is no phonogram value, as oa 1 is.".formatted(wantedFor)));
    }
    if (note.length() > MAX_NOTE_LENGTH) {
      errors.add(new FieldError("note", "At most %d characters.".formatted(MAX_NOTE_LENGTH)));
    }
    return errors;
  }

  /** The value that it is meant for, if there is such a one. */
  Optional<Correspondence> target(Lexicon lexicon) {
    return lexicon.catalogue().correspondences().stream()
        .filter(each -> each.isTaught() && each.label().equals(wantedFor))
        .findFirst();
  }

  public static Content of(Proposal proposal) {
    return new Content(proposal, "", "");
  }
}
