package org.hedgerow.sentences.compose;

/** In which numbers a noun is used. */
public enum Countability {
  /** One or several: <em>a boat, boats</em>. */
  COUNT,
  /** Neither one nor several: <em>mud</em>. */
  MASS,
  /** Several only: <em>shorts</em>. */
  PAIR
}
