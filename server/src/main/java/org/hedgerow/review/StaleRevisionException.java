package org.hedgerow.review;

/** Somebody works on what has been changed meanwhile; nothing was done. */
public final class StaleRevisionException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Contribution present;

  StaleRevisionException(int revision, Contribution present) {
    super(
        "%s of contribution %d; now it is revision %d"
            .formatted(
                revision == 0 ? "What you have is no revision" : "You have revision " + revision,
                present.id(),
                present.revision()));
    this.present = present;
  }

  /** As it is now. */
  public Contribution present() {
    return present;
  }
}
