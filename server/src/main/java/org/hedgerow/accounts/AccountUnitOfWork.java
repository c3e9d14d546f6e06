package org.hedgerow.accounts;

import org.hedgerow.operations.AuditLog;

/** The account stores within one transaction. */
public interface AccountUnitOfWork {
  AccountStore accounts();

  LinkStore links();

  SessionStore sessions();

  TokenStore tokens();

  FailedSignInStore failures();

  DeviceStore devices();

  AuditLog audit();

  AuditTrail trail();

  CentreStore centre();
}
