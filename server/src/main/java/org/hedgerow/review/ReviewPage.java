package org.hedgerow.review;

import org.hedgerow.accounts.AuditLog;

/** Everything about review, within one transaction. */
public interface ReviewPage {
  ContributionStore contributions();

  DecisionStore decisions();

  UploadStore uploads();

  BankStore bank();

  TeachingStore teaching();

  AuditLog audit();
}
