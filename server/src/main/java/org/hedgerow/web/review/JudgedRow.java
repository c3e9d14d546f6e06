package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Examination;
import org.hedgerow.review.SubmitMany;
import org.hedgerow.web.problems.ParameterError;

/**
 * What came of a row.
 *
 * @param row its number, as a spreadsheet counts
 * @param guessed left out unless the sounds are a guess
 * @param errors by the names of columns
 * @param waiting numbers of contributions about the same that wait for a decision
 * @param contribution its number, where it was submitted
 */
record JudgedRow(
    int row,
    String spelling,
    String accent,
    String sounds,
    @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean guessed,
    String verdict,
    @JsonProperty("faults") List<ParameterError> errors,
    List<String> serves,
    List<ContributionFindingView> findings,
    List<Integer> waiting,
    OptionalInt contribution) {

  /** Of a row that nobody need judge. */
  static JudgedRow refused(ReadRow read, RowVerdict verdict, List<ParameterError> errors) {
    return new JudgedRow(
        read.row().number(),
        read.spelling(),
        read.accent(),
        read.sounds(),
        read.guessed(),
        verdict.label(),
        errors,
        List.of(),
        List.of(),
        List.of(),
        OptionalInt.empty());
  }

  static JudgedRow of(ReadRow read, SubmitMany.Result result) {
    List<ParameterError> errors = new ArrayList<>();
    result
        .errors()
        .forEach(
            error ->
                errors.add(new ParameterError(Column.of(error.field()).label(), error.message())));
    return new JudgedRow(
        read.row().number(),
        read.spelling(),
        read.accent(),
        read.sounds(),
        read.guessed(),
        verdict(read, result).label(),
        errors,
        result.examination().map(Examination::serves).orElse(List.of()),
        ContributionFindingView.all(
            result.examination().map(Examination::remarks).orElse(List.of())),
        result.waiting().stream().map(Contribution::id).toList(),
        result.submitted().map(each -> OptionalInt.of(each.id())).orElse(OptionalInt.empty()));
  }

  boolean isGood() {
    return verdict.equals(RowVerdict.READY.label()) || verdict.equals(RowVerdict.LOOK.label());
  }

  static RowVerdict verdict(ReadRow read, SubmitMany.Result result) {
    RowVerdict verdict = ContributionChecks.verdict(result);
    return verdict == RowVerdict.READY && read.guessed() ? RowVerdict.LOOK : verdict;
  }
}
