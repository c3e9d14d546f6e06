package org.hedgerow.accounts;

/**
 * Something isn't any more as whoever wants to change it knows it; nothing was changed. The message
 * says how it is now.
 */
public final class ChangedMeanwhileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public ChangedMeanwhileException(String message) {
    super(message);
  }
}
