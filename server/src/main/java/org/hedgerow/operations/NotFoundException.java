package org.hedgerow.operations;

/** What somebody wants to change isn't there, or isn't any more. */
public final class NotFoundException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public NotFoundException(String what) {
    super(what + " isn't there (any more)");
  }
}
