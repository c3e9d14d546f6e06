package org.hedgerow.operations;

/** Nothing can be stored, because the disk of the database is full. */
public final class StorageFullException extends UnavailableException {
  private static final long serialVersionUID = 1L;

  public StorageFullException() {
    super("The disk of the database is full.");
  }

  public StorageFullException(Throwable cause) {
    super("The disk of the database is full.", cause);
  }
}
