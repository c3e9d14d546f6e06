package org.hedgerow.store.database;

/**
 * The database can't be opened. The message is one line for the person who started the program:
 * what is wrong and what to do.
 */
public final class DatabaseUnavailableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public DatabaseUnavailableException(String message) {
    super(message);
  }

  public DatabaseUnavailableException(String message, Throwable cause) {
    super(message, cause);
  }
}
