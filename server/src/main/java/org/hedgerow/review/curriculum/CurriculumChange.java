package org.hedgerow.review.curriculum;

import java.util.List;
import java.util.Map;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Catalogue;

/** What an administrator wants done to a named set. */
public sealed interface CurriculumChange permits SaveSet, WithdrawSet {

  /** What is wrong with it whatever there is at present. */
  List<FieldError> errors(Catalogue catalogue);

  /**
   * @throws org.hedgerow.operations.NotFoundException if it needs a set that there isn't
   * @throws org.hedgerow.operations.RejectedException if a set has to stay as it is
   */
  Outcome apply(Curriculum present, Catalogue catalogue);

  /**
   * What becomes of it.
   *
   * @param replaced {@link SetKind#mark} of what it takes the place of
   * @param action a noun and a verb for the audit record
   * @param subject what it is done to, for the audit record
   * @param summary for people
   */
  record Outcome(
      Curriculum curriculum,
      String replaced,
      String action,
      String subject,
      String summary,
      Map<String, Object> before,
      Map<String, Object> after) {}
}
