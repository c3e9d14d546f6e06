package org.hedgerow.accounts;

/** Everything about accounts, within one transaction. */
public interface AccountPage {
  AccountStore accounts();

  LinkStore links();

  SessionStore sessions();

  TokenStore tokens();

  FailureStore failures();

  DeviceStore devices();

  AuditLog audit();

  AuditTrail trail();

  CentreStore centre();
}
