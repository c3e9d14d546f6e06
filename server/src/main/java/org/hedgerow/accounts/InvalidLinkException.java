package org.hedgerow.accounts;

/** A link leads nowhere: it was used, has expired, was withdrawn, or never was. */
public final class InvalidLinkException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  InvalidLinkException() {
    super("The link was used already, has expired or was withdrawn");
  }
}
