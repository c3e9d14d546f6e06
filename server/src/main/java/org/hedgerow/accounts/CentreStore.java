package org.hedgerow.accounts;

/** What is kept of the centre, within a transaction. */
public interface CentreStore {
  Centre read();

  /** The same; no other transaction changes it until this one ends. */
  Centre lock();

  void save(Centre centre);
}
