package org.hedgerow.store.archive;

/**
 * An archive can't be written or read. The message is one line for the person who asked: what is
 * wrong and what to do.
 */
public final class UnusableArchiveException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  UnusableArchiveException(String message) {
    super(message);
  }

  UnusableArchiveException(String message, Throwable cause) {
    super(message, cause);
  }

  /** Something is wrong with a line. */
  static UnusableArchiveException at(String file, long line, String what) {
    return new UnusableArchiveException(
        "The archive can’t be imported: %s, line %d %s. The bank stays empty."
            .formatted(file, line, what));
  }

  /** Something is wrong with a file as a whole. */
  static UnusableArchiveException damaged(String file, String how) {
    return new UnusableArchiveException(
        "The archive is damaged: %s %s. The bank stays empty.".formatted(file, how));
  }
}
