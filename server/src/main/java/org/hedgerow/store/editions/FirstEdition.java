package org.hedgerow.store.editions;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.AccentCatalogue;

/**
 * What the first edition of a bank holds.
 *
 * @param number counted from 1
 * @param accents in the order in which they are shown, all with one catalogue; at least one
 * @param words with their tags by alphabet and their pronunciations in the order of their weight
 * @param curriculum what centres choose from
 * @param sentences those it begins with
 */
public record FirstEdition(
    int number,
    List<AccentCatalogue> accents,
    List<Word> words,
    Curriculum curriculum,
    Sentences sentences) {
  static final int FIRST = 1;

  public FirstEdition {
    accents = List.copyOf(accents);
    words = List.copyOf(words);
    requireNonNull(curriculum);
    requireNonNull(sentences);
  }

  /** The edition with its index, which takes a moment to build. */
  public Lexicon lexicon() {
    return lexicon(Pictures.NONE);
  }

  /** The edition with its index and the pictures that its words name. */
  public Lexicon lexicon(Pictures pictures) {
    return new Lexicon(number, accents, words, pictures).with(curriculum).with(sentences);
  }
}
