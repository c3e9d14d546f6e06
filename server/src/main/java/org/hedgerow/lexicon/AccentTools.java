package org.hedgerow.lexicon;

import java.util.List;
import java.util.stream.IntStream;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.FalsePairs;
import org.hedgerow.reading.Standard;

/**
 * What it takes to index words as one accent says them. It depends on the catalogue alone, so all
 * editions share it. A <em>profile</em> of a word holds the numbers of realisations of the accent
 * and of those it falls back on, one for an added {@code s} that says /z/, and one for a word that
 * never passes.
 */
final class AccentTools {
  private final AccentCatalogue catalogue;
  private final ChainedRealisations realisations;
  private final Aligner aligner;
  private final FalsePairs falsePairs;

  /**
   * @param chain the accent, its parent and so on
   */
  AccentTools(List<AccentCatalogue> chain) {
    this.catalogue = chain.get(0);
    this.realisations = new ChainedRealisations(chain);
    this.aligner = new Aligner(catalogue);
    this.falsePairs = new FalsePairs(catalogue.catalogue());
  }

  AccentCatalogue catalogue() {
    return catalogue;
  }

  ChainedRealisations realisations() {
    return realisations;
  }

  Aligner aligner() {
    return aligner;
  }

  FalsePairs falsePairs() {
    return falsePairs;
  }

  /** The number in a profile of an added {@code s} that says /z/. */
  int endingS() {
    return realisations.size();
  }

  /** The number in a profile that no standard allows. */
  int never() {
    return realisations.size() + 1;
  }

  AccentStandard standard(Standard standard) {
    return new AccentStandard(
        catalogue.accent().tag(),
        catalogue.accent().spelling(),
        blocked(standard),
        targets(standard));
  }

  private int[] targets(Standard standard) {
    return IntStream.range(0, realisations.size())
        .filter(number -> standard.isTarget(realisations.get(number).correspondence()))
        .toArray();
  }

  private long[] blocked(Standard standard) {
    long[] bits = new long[(never() >> 6) + 1];
    for (int number = 0; number < realisations.size(); number++) {
      Realisation realisation = realisations.get(number);
      if (!isAllowed(standard, realisation, false)) {
        set(bits, number);
      }
      if (isZ(realisation) && !isAllowed(standard, realisation, true)) {
        set(bits, endingS());
      }
    }
    set(bits, never());
    return bits;
  }

  private static boolean isZ(Realisation realisation) {
    return realisation.grapheme().text().equals("s")
        && Sound.joined(realisation.sounds()).equals("z");
  }

  private static void set(long[] bits, int bit) {
    bits[bit >> 6] |= 1L << bit;
  }

  private static boolean isAllowed(Standard standard, Realisation realisation, boolean inEnding) {
    return standard.isTarget(realisation.correspondence())
        || standard.allows(realisation, inEnding);
  }
}
