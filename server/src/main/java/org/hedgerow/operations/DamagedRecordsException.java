package org.hedgerow.operations;

/** Records were damaged where they are kept, and can't be read until a backup is restored. */
public final class DamagedRecordsException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public DamagedRecordsException(String message, Throwable cause) {
    super(message, cause);
  }
}
