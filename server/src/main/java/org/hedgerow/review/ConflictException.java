package org.hedgerow.review;

/** What somebody wants isn't possible with the contribution as it is; nothing was done. */
public final class ConflictException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Contribution present;

  ConflictException(String message, Contribution present) {
    super(message);
    this.present = present;
  }

  static ConflictException of(String wish, Contribution present) {
    return new ConflictException(
        "Contribution %d can’t be %s: it is %s"
            .formatted(present.id(), wish, present.state().label()),
        present);
  }

  /** As it is now. */
  public Contribution present() {
    return present;
  }
}
