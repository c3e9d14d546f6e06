package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Examination;
import org.hedgerow.review.SubmitMany;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.problems.ParameterError;

/** {@code POST /contribution-checks}: what would become of it? Nothing is kept. */
final class ContributionChecks {
  private final SubmitMany submitMany;
  private final ContentBodyReader contents;

  ContributionChecks(SubmitMany submitMany, ContentBodyReader contents) {
    this.submitMany = submitMany;
    this.contents = contents;
  }

  /**
   * The answer.
   *
   * @param errors because of which it can't be submitted
   * @param serves the values whose lists would gain by it
   * @param waiting numbers of contributions about the same that wait for a decision
   */
  record View(
      String verdict,
      @JsonProperty("faults") List<ParameterError> errors,
      List<String> serves,
      List<ContributionFindingView> findings,
      List<Integer> waiting) {}

  void check(ApiRequest request) {
    Content content = contents.content(request.context());
    SubmitMany.Result result = submitMany.judge(request.actor(), List.of(content)).get(0);
    request
        .context()
        .json(
            new View(
                verdict(result).label(),
                ProposalErrors.errors(result.errors()),
                result.examination().map(Examination::serves).orElse(List.of()),
                ContributionFindingView.all(
                    result.examination().map(Examination::remarks).orElse(List.of())),
                result.waiting().stream().map(Contribution::id).toList()));
  }

  static RowVerdict verdict(SubmitMany.Result result) {
    if (!result.errors().isEmpty()) {
      return RowVerdict.REFUSED;
    }
    if (!result.waiting().isEmpty()) {
      return RowVerdict.WAITING;
    }
    boolean clean = result.examination().filter(each -> each.remarks().isEmpty()).isPresent();
    return clean ? RowVerdict.READY : RowVerdict.LOOK;
  }
}
