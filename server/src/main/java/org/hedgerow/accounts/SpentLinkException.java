package org.hedgerow.accounts;

/** A link leads nowhere: it was used, has expired, was withdrawn, or never was. */
public final class SpentLinkException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  SpentLinkException() {
    super("The link was used already, has expired or was withdrawn");
  }
}
