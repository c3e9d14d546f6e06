package org.hedgerow.web.people;

/**
 * What a link offers.
 *
 * @param role of the account it makes, or is for
 * @param account whose password it changes; empty where it makes an account
 */
record WelcomePage(Form form, String role, String account) {
  boolean isForPassword() {
    return !account.isEmpty();
  }
}
