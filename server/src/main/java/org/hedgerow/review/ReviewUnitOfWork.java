package org.hedgerow.review;

import org.hedgerow.operations.AuditLog;

/** The review stores within one transaction. */
public interface ReviewUnitOfWork {
  ContributionStore contributions();

  DecisionStore decisions();

  UploadStore uploads();

  BankStore bank();

  CurriculumStore curriculum();

  AuditLog audit();
}
