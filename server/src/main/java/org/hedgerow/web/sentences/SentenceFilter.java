package org.hedgerow.web.sentences;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.phonics.Correspondence;

/**
 * Which sentences of the bank are wanted.
 *
 * @param value the phonogram value that they are for; empty for any
 * @param accents tags of the accents in which they must be right
 * @param word in lower case, which they must hold; empty for any
 * @param longest how many words they may have
 */
record SentenceFilter(
    Optional<Correspondence> value, List<String> accents, String word, int longest) {

  /** In the order of the bank. */
  public List<Sentence> in(Sentences sentences) {
    return sentences.all().stream().filter(this::fits).toList();
  }

  private boolean fits(Sentence sentence) {
    List<String> words = words(sentence);
    return value.map(sentence.value()::equals).orElse(true)
        && sentence.accents().containsAll(accents)
        && words.size() <= longest
        && (word.isEmpty() || words.contains(word));
  }

  private static List<String> words(Sentence sentence) {
    return Arrays.stream(sentence.text().toLowerCase(Locale.ROOT).split("[^a-z'’]+", 0))
        .filter(text -> !text.isEmpty())
        .toList();
  }
}
