package org.hedgerow.store;

/** An archive can't be written or read; nothing was changed. The message is for people. */
public final class UnusableArchiveException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  UnusableArchiveException(String message) {
    super(message);
  }

  UnusableArchiveException(String message, Throwable cause) {
    super(message, cause);
  }
}
