package org.hedgerow.store.accounts;

import org.hedgerow.accounts.Centre;
import org.hedgerow.accounts.CentreStore;
import org.jdbi.v3.core.Handle;

/** The centre in its one row. */
record JdbiCentre(Handle handle) implements CentreStore {
  private static final String SELECT = "select name, approvals, version from centre";

  @Override
  public Centre read() {
    return handle.createQuery(SELECT).mapTo(Centre.class).one();
  }

  @Override
  public Centre lock() {
    return handle.createQuery(SELECT + " for update").mapTo(Centre.class).one();
  }

  @Override
  public void save(Centre centre) {
    handle.execute(
        "update centre set name = ?, approvals = ?, version = ?",
        centre.name(),
        centre.approvals(),
        centre.version());
  }
}
