package org.hedgerow.seedlexicon;

/**
 * A phone of the CMU Pronouncing Dictionary.
 *
 * @param phone in ARPAbet, without stress
 * @param manner CMUdict's class: vowel, stop, affricate, fricative, aspirate, liquid, nasal or
 *     semivowel
 */
public record PhoneRow(String phone, String manner) {

  static PhoneRow from(TsvRow row) {
    return new PhoneRow(row.required("phone"), row.required("class"));
  }

  /** Whether the phone is a vowel and so carries a stress mark in the dictionary. */
  public boolean isVowel() {
    return manner.equals("vowel");
  }
}
