package org.hedgerow.store.database;

import org.jdbi.v3.core.JdbiException;

/** Stores what only notes that something was used. */
public final class BestEffort {
  private BestEffort() {}

  /** Leaves it where the disk is full: whoever only reads mustn't be refused for it. */
  public static void store(Runnable note) {
    try {
      note.run();
    } catch (JdbiException problem) {
      if (!SqlStates.isStorageFull(problem)) {
        throw problem;
      }
    }
  }
}
