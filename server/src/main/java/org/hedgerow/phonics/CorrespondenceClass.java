package org.hedgerow.phonics;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a correspondence is to a teacher of early reading. */
public enum CorrespondenceClass {
  /** A single letter saying its first-taught sound. */
  BASIC,
  /** A doubled consonant, or {@code ck}, saying the sound of the single one. */
  DOUBLED,
  /** Letters taught on their own, with one of their numbered values. */
  PHONOGRAM,
  /** A letter without a sound. */
  SILENT,
  /** Letters of an ending, such as {@code ed} or {@code le}. */
  ENDING,
  /** A spelling met in too few words to be taught, or a reduced vowel. */
  IRREGULAR;

  /** The name in tables and answers, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The class with this label, if there is one. */
  public static Optional<CorrespondenceClass> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
