package org.hedgerow.web;

/** Says whether the server can do its work just now. */
@FunctionalInterface
public interface Readiness {
  boolean isReady();
}
