package org.hedgerow.web.people;

/**
 * A secret that is shown once.
 *
 * @param what it is and what to do with it; empty where there is none
 */
record RevealedSecret(String what, String secret) {
  static final RevealedSecret NOTHING = new RevealedSecret("", "");

  boolean isSomething() {
    return !secret.isEmpty();
  }
}
