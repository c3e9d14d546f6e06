package org.hedgerow.review;

import java.util.List;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Word;

/**
 * What an edition changes.
 *
 * @param words as they stand from now on, new ones or instead of what the bank holds
 * @param withdrawnWords spellings of words that go
 * @param pictures new ones
 * @param sentences new ones
 * @param withdrawnSentences texts of sentences that go
 */
public record Change(
    List<Word> words,
    List<String> withdrawnWords,
    List<Picture> pictures,
    List<Sentence> sentences,
    List<String> withdrawnSentences) {
  public Change {
    words = List.copyOf(words);
    withdrawnWords = List.copyOf(withdrawnWords);
    pictures = List.copyOf(pictures);
    sentences = List.copyOf(sentences);
    withdrawnSentences = List.copyOf(withdrawnSentences);
  }

  static Change of(Word word) {
    return new Change(List.of(word), List.of(), List.of(), List.of(), List.of());
  }

  static Change of(Word word, Picture picture) {
    return new Change(List.of(word), List.of(), List.of(picture), List.of(), List.of());
  }

  static Change of(Sentence sentence) {
    return new Change(List.of(), List.of(), List.of(), List.of(sentence), List.of());
  }

  static Change withoutWord(String spelling) {
    return new Change(List.of(), List.of(spelling), List.of(), List.of(), List.of());
  }

  static Change withoutSentence(String text) {
    return new Change(List.of(), List.of(), List.of(), List.of(), List.of(text));
  }
}
