package org.hedgerow.seed;

import java.util.List;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.SentenceRow;

/** The sentences that the first edition begins with. */
public final class SeedSentences {

  /** Each was checked in these. */
  private static final List<String> ACCENTS = List.of("en-US", "en-GB");

  private SeedSentences() {}

  /**
   * @throws IllegalArgumentException if a row names a value that does not exist
   */
  public static Sentences read(SeedLexicon seed, Catalogue catalogue) {
    return new Sentences(seed.sentences().stream().map(row -> sentence(row, catalogue)).toList());
  }

  private static Sentence sentence(SentenceRow row, Catalogue catalogue) {
    return new Sentence(
        row.sentence(),
        catalogue
            .value(row.phonogram(), row.value())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "there is no value %s %d, which a sentence is for"
                            .formatted(row.phonogram(), row.value()))),
        ACCENTS);
  }
}
