package org.hedgerow.web.chart;

import java.util.List;
import java.util.Locale;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Sound;

/** Where a value stands in the chart: by its letters and the kind of its sound. */
public enum ChartSection {
  CONSONANTS("Consonants", "Letters that together say one consonant sound"),
  VOWELS("Vowels", "Letters that together say one vowel sound"),
  SPLIT("Split vowels", "A vowel and an e, with a consonant between them"),
  WITH_R("Vowels with r", "A vowel that r has changed"),
  SINGLE("Single letters", "One letter that says something other than its first sound"),
  ENDINGS("Endings", "Letters at the end of longer words");

  private final String title;
  private final String meaning;

  ChartSection(String title, String meaning) {
    this.title = title;
    this.meaning = meaning;
  }

  public String title() {
    return title;
  }

  public String meaning() {
    return meaning;
  }

  /** The name in addresses, in lower case with hyphens. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static ChartSection of(Correspondence value, Accent accent) {
    String letters = value.grapheme().text();
    if (value.kind() == CorrespondenceClass.ENDING) {
      return ENDINGS;
    }
    if (value.grapheme().isSplit()) {
      return SPLIT;
    }
    if (letters.length() == 1) {
      return SINGLE;
    }
    if (!saysVowel(value, accent)) {
      return CONSONANTS;
    }
    return letters.indexOf('r') > 0 || letters.equals("re") ? WITH_R : VOWELS;
  }

  private static boolean saysVowel(Correspondence value, Accent accent) {
    List<List<Sound>> ways = value.soundsIn(accent);
    return !ways.isEmpty() && ways.get(0).stream().anyMatch(Sound::vowel);
  }
}
