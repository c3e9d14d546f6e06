package org.hedgerow.reading;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The choices of a centre about what a child can read beside the basic letters. */
public enum Switch {
  /** A doubled consonant reads as the single one: <em>bell</em>. */
  DOUBLED(true, "doubled consonants read as one: bell, egg"),
  /** ck reads as c: <em>duck</em>. */
  CK(true, "ck reads as c: duck"),
  /** Where ch is the phonogram, or taught, tch can be read: <em>catch</em>. */
  TCH_AS_CH(true, "tch reads as ch where ch is taught: catch"),
  /** The s of an ending may say /z/: <em>dogs</em>. */
  S_AS_Z(true, "s may say /z/ in an ending: dogs"),
  /** n before k, c, x, q and g may say /ŋ/: <em>bank</em>. */
  N_BEFORE_K(true, "n before k may say /ŋ/: bank"),
  /** x reads as /ks/: <em>box</em>. */
  X(true, "x reads as /ks/: box"),
  /** Vowel letters may say a reduced sound: <em>lemon</em>. */
  REDUCED_VOWELS(false, "vowel letters may say a reduced sound: lemon"),
  /** Inflected forms are words like any others: <em>dogs, jumped</em>. */
  INFLECTED_FORMS(false, "inflected forms are allowed: dogs, jumped");

  private final boolean onByDefault;
  private final String meaning;

  Switch(boolean onByDefault, String meaning) {
    this.onByDefault = onByDefault;
    this.meaning = meaning;
  }

  public boolean isOnByDefault() {
    return onByDefault;
  }

  /** What a teacher allows by turning it on. */
  public String meaning() {
    return meaning;
  }

  /** The name in queries, in lower case with hyphens. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The switch with this label, if there is one. */
  public static Optional<Switch> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
