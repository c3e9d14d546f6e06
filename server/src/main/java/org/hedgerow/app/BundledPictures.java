package org.hedgerow.app;

import org.hedgerow.lexicon.Pictures;
import org.hedgerow.seed.SeedPictures;
import org.hedgerow.seedlexicon.DamagedSeedException;
import org.hedgerow.seedlexicon.SeedLexicon;

/** The pictures that the program carries. */
final class BundledPictures {

  private BundledPictures() {}

  /**
   * All of them, read and checked.
   *
   * @throws CommandFailedException naming the file that is missing or damaged
   */
  static Pictures read() {
    try {
      return SeedPictures.read(SeedLexicon.bundled());
    } catch (DamagedSeedException damage) {
      throw new CommandFailedException(String.valueOf(damage.getMessage()));
    }
  }
}
