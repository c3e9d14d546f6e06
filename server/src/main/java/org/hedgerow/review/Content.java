package org.hedgerow.review;

/**
 * What a contributor says: while it is a draft, anything may be missing.
 *
 * @param proposal what is to change
 * @param wantedFor the phonogram value that it is meant for, as in {@code oa 1}; or an empty text
 * @param note what else a reviewer should know; or an empty text
 */
public record Content(Proposal proposal, String wantedFor, String note) {
  public Content {
    wantedFor = Given.text(wantedFor);
    note = Given.text(note);
  }

  public static Content of(Proposal proposal) {
    return new Content(proposal, "", "");
  }
}
