package org.hedgerow.operations;

/** Nothing can be said or done about accounts just now; it may be possible in a moment. */
public sealed class UnavailableException extends RuntimeException permits StorageFullException {
  private static final long serialVersionUID = 1L;

  public UnavailableException(String message) {
    super(message);
  }

  public UnavailableException(String message, Throwable cause) {
    super(message, cause);
  }
}
