package org.hedgerow.accounts;

/** What somebody wants to change isn't there, or isn't any more. */
public final class NothingThereException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public NothingThereException(String what) {
    super(what + " isn't there (any more)");
  }
}
