package org.hedgerow.store;

import org.jdbi.v3.core.JdbiException;

/** Stores what only notes that something was used. */
final class BestEffort {
  private BestEffort() {}

  /** Leaves it where the disk is full: whoever only reads mustn't be refused for it. */
  static void store(Runnable note) {
    try {
      note.run();
    } catch (JdbiException problem) {
      if (!SqlStates.isStorageFull(problem)) {
        throw problem;
      }
    }
  }
}
