package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.hedgerow.review.Remark;

/**
 * What the machine found.
 *
 * @param accent left out where it is about the word in any accent
 */
record RemarkView(
    String code,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) String accent,
    List<Integer> letters,
    String message) {
  static RemarkView of(Remark remark) {
    return new RemarkView(remark.code(), remark.accent(), remark.letters(), remark.message());
  }

  static List<RemarkView> all(List<Remark> remarks) {
    return remarks.stream().map(RemarkView::of).toList();
  }
}
