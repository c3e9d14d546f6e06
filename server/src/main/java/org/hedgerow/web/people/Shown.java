package org.hedgerow.web.people;

/**
 * A secret that is shown once.
 *
 * @param what it is and what to do with it; empty where there is none
 */
record Shown(String what, String secret) {
  static final Shown NOTHING = new Shown("", "");

  boolean isSomething() {
    return !secret.isEmpty();
  }
}
