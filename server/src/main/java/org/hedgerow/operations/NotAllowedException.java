package org.hedgerow.operations;

/** The actor's role doesn't allow this. */
public final class NotAllowedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Role needed;

  public NotAllowedException(Role needed) {
    super("That takes the role " + needed.label());
    this.needed = needed;
  }

  /** The least role that may. */
  public Role needed() {
    return needed;
  }
}
