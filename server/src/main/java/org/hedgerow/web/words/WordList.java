package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Sound;

/**
 * The answer to a question for words.
 *
 * @param total how many words the whole list has
 * @param words those that were asked for
 * @param next the cursor to the words after them, for {@code after}; empty at the end of the list
 */
record WordList(int total, List<Word> words, Optional<String> next) {

  public WordList {
    words = List.copyOf(words);
  }

  public static WordList find(Lexicon lexicon, WordRequest request) {
    List<Word> all = all(lexicon, request);
    int from = Math.min(request.offset(), all.size());
    int to = Math.min(from + request.limit(), all.size());
    Optional<String> next =
        to < all.size() ? Optional.of(request.place(to).toString()) : Optional.empty();
    return new WordList(all.size(), all.subList(from, to), next);
  }

  /** All words of a list, wherever in it the query begins and however few it asks for. */
  static List<Word> all(Lexicon lexicon, WordRequest request) {
    List<Word> found = lexicon.find(request.query());
    return request.sound().map(sound -> holding(sound, found, request)).orElse(found);
  }

  /**
   * The index knows that a word holds a spelling of the sound, but some spellings say two:
   * <em>o</em> in <em>hot</em> and in <em>dog</em>.
   */
  private static List<Word> holding(Sound sound, List<Word> found, WordRequest request) {
    return found.stream().filter(word -> holds(word, sound, request.query().accents())).toList();
  }

  private static boolean holds(Word word, Sound sound, List<String> accents) {
    return accents.stream()
        .flatMap(accent -> word.saidIn(accent).stream())
        .allMatch(pronunciation -> pronunciation.sounds().contains(sound));
  }
}
