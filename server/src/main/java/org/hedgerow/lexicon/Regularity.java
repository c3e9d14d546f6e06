package org.hedgerow.lexicon;

import java.util.HashMap;
import java.util.Map;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Realisation;

/**
 * How often the letters of a value mean that value: of all the times they stand together as one
 * grapheme in words of common use, the share in which they say it.
 */
public final class Regularity {

  private final Map<Correspondence, Integer> byValue = new HashMap<>();
  private final Map<String, Integer> byLetters = new HashMap<>();

  public Regularity(Lexicon lexicon, String accent) {
    for (Realisation each : lexicon.accent(accent).orElseThrow().realisations()) {
      int times = lexicon.occurrences(accent, each);
      byValue.merge(each.correspondence(), times, Integer::sum);
      byLetters.merge(each.grapheme().text(), times, Integer::sum);
    }
  }

  /** From 0 to 1; 0 if the letters are never met. */
  public double of(Correspondence value) {
    int all = byLetters.getOrDefault(value.grapheme().text(), 0);
    return all == 0 ? 0 : (double) times(value) / all;
  }

  /** How often the value is met in words of common use. */
  public int times(Correspondence value) {
    return byValue.getOrDefault(value, 0);
  }
}
