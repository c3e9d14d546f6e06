package org.hedgerow.accounts;

import java.util.Locale;

/** What a link is good for. */
public enum LinkPurpose {
  /** An account with the link's role. */
  INVITATION,
  /** The first account of an administrator, as long as there is none. */
  FIRST_ADMINISTRATOR,
  /** A new password for an account. */
  NEW_PASSWORD;

  /** As records have it. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
