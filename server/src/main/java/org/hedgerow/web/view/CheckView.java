package org.hedgerow.web.view;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.Finding;

/**
 * What can be said of a word, and why.
 *
 * @param guessed left out unless how the word is said is a guess
 */
public record CheckView(
    String word,
    String verdict,
    List<FindingView> findings,
    @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean guessed) {

  /**
   * @param accent left out where it is about the word in any accent
   */
  public record FindingView(
      String code,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String accent,
      List<Integer> letters,
      String message) {

    public static FindingView of(Finding finding) {
      return new FindingView(
          finding.code().label(), finding.accent(), finding.letters(), finding.message());
    }
  }

  public static CheckView of(Check check) {
    return new CheckView(
        check.word(),
        check.verdict().label(),
        check.findings().stream().map(FindingView::of).toList(),
        check.guessed());
  }
}
