package org.hedgerow.review;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What somebody contributed, as it stands now.
 *
 * @param content what it says
 * @param revision counts what it said, from 1; every change of the content makes a new one
 * @param author who contributed it, and may not decide on it
 * @param made when it was begun
 * @param changed when its content or state last changed
 * @param submitted when it was last submitted
 * @param serves the phonogram values whose lists would gain by it, as in {@code oa 1}
 * @param remarks the machine's, made at submission
 * @param edition in which it was published
 */
public record Contribution(
    int id,
    Content content,
    ContributionState state,
    int revision,
    Person author,
    Instant made,
    Instant changed,
    Optional<Instant> submitted,
    List<String> serves,
    List<ContributionFinding> remarks,
    OptionalInt edition) {
  public Contribution {
    serves = List.copyOf(serves);
    remarks = List.copyOf(remarks);
  }

  public Proposal proposal() {
    return content.proposal();
  }

  public ContributionKind kind() {
    return proposal().kind();
  }

  Pending pending() {
    return new Pending(id, author.accountId(), changed, serves);
  }

  /** As the record of what was done names it. */
  String name() {
    return "contribution " + id;
  }

  /** The same in another state. */
  Contribution in(ContributionState next, Instant now) {
    return new Contribution(
        id, content, next, revision, author, made, now, submitted, serves, remarks, edition);
  }

  /** With other content, which is a new revision. */
  Contribution saying(Content changedContent, Instant now) {
    return new Contribution(
        id,
        changedContent,
        state,
        revision + 1,
        author,
        made,
        now,
        submitted,
        List.of(),
        List.of(),
        edition);
  }

  /** Sent to the reviewers with what the machine makes of it. */
  Contribution submitted(Examination examination, Instant now) {
    return new Contribution(
        id,
        content,
        ContributionState.SUBMITTED,
        revision,
        author,
        made,
        now,
        Optional.of(now),
        examination.serves(),
        examination.remarks(),
        edition);
  }

  /** In the bank since an edition. */
  Contribution publishedIn(int published, Instant now) {
    return new Contribution(
        id,
        content,
        ContributionState.APPROVED,
        revision,
        author,
        made,
        now,
        submitted,
        serves,
        remarks,
        OptionalInt.of(published));
  }
}
