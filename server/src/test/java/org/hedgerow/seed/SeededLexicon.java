package org.hedgerow.seed;

import java.util.List;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.seedlexicon.SeedLexicon;

/** The whole first edition in memory, without a database; made once for all tests of a run. */
public final class SeededLexicon {

  private static final class Holder {
    static final Lexicon LEXICON = make();
  }

  private SeededLexicon() {}

  public static Lexicon get() {
    return Holder.LEXICON;
  }

  /** Nothing but the first edition. */
  public static Editions editions() {
    return Editions.only(get());
  }

  /** What centres choose from in it. */
  public static Curriculum curriculum() {
    return SeedCurriculum.read(SeedLexicon.bundled(), get().catalogue());
  }

  private static Lexicon make() {
    SeedLexicon seed = SeedLexicon.bundled();
    List<AccentCatalogue> accents = SeedCatalogue.weighted(seed);
    SeedWords words = new SeedWords(seed, accents);
    return new Lexicon(
            SeedWords.FIRST_EDITION, accents, words.words(word -> {}), SeedPictures.read(seed))
        .with(SeedCurriculum.read(seed, accents.get(0).catalogue()))
        .with(SeedSentences.read(seed, accents.get(0).catalogue()));
  }
}
