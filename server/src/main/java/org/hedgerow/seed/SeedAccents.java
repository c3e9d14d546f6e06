package org.hedgerow.seed;

import java.util.List;
import org.hedgerow.phonics.Accent;
import org.hedgerow.seedlexicon.AccentRow;
import org.hedgerow.seedlexicon.SeedLexicon;

/** The accents of the seed lexicon. */
final class SeedAccents {

  private SeedAccents() {}

  static List<Accent> read(SeedLexicon seed) {
    return seed.accents().stream().map(SeedAccents::accent).toList();
  }

  private static Accent accent(AccentRow row) {
    Accent alone =
        Accent.of(row.tag(), row.name(), row.vowels(), row.consonants()).spelt(row.spelling());
    return row.parent().isEmpty() ? alone : alone.under(row.parent());
  }
}
