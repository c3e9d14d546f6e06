package org.hedgerow.operations;

/**
 * Something isn't any more as whoever wants to change it knows it; nothing was changed. The message
 * says how it is now.
 */
public final class StaleUpdateException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public StaleUpdateException(String message) {
    super(message);
  }
}
