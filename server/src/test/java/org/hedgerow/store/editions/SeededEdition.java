package org.hedgerow.store.editions;

import java.util.Arrays;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.lexicon.Word;
import org.hedgerow.seed.SeedWords;
import org.hedgerow.seed.SeededLexicon;

/** The first edition, as the seed makes it, or a part of it. */
public final class SeededEdition {
  private SeededEdition() {}

  public static FirstEdition whole() {
    return of(SeededLexicon.get().words(), SeededLexicon.get().sentences());
  }

  /** With the whole catalogue, but few words and no sentences. */
  public static FirstEdition of(String... spellings) {
    Lexicon lexicon = SeededLexicon.get();
    return of(
        Arrays.stream(spellings).map(spelling -> lexicon.word(spelling).orElseThrow()).toList(),
        Sentences.NONE);
  }

  private static FirstEdition of(List<Word> words, Sentences sentences) {
    return new FirstEdition(
        SeedWords.FIRST_EDITION,
        SeededLexicon.get().accents(),
        words,
        SeededLexicon.curriculum(),
        sentences);
  }
}
