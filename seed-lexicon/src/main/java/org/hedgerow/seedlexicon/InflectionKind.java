package org.hedgerow.seedlexicon;

import java.util.Locale;

/** What an inflected form is of its base. */
public enum InflectionKind {
  PLURAL,
  THIRD_PERSON,
  PAST,
  PARTICIPLE,
  GERUND,
  COMPARATIVE,
  SUPERLATIVE;

  /** The name in the tables, such as {@code third-person}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
