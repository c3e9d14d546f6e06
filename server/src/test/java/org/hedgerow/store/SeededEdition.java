package org.hedgerow.store;

import java.util.Arrays;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.seed.SeedWords;
import org.hedgerow.seed.SeededLexicon;

/** The first edition, as the seed makes it, or a part of it. */
public final class SeededEdition {
  private SeededEdition() {}

  public static Edition whole() {
    return of(SeededLexicon.get().words());
  }

  /** With the whole catalogue, but few words. */
  public static Edition of(String... spellings) {
    Lexicon lexicon = SeededLexicon.get();
    return of(
        Arrays.stream(spellings).map(spelling -> lexicon.word(spelling).orElseThrow()).toList());
  }

  private static Edition of(List<Word> words) {
    return new Edition(
        SeedWords.FIRST_EDITION,
        SeededLexicon.get().accents(),
        words,
        SeededLexicon.teaching(),
        SeededLexicon.get().sentences());
  }
}
