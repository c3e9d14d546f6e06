package org.hedgerow.language;

import edu.cmu.sphinx.linguist.dictionary.Dictionary;
import edu.cmu.sphinx.linguist.dictionary.Pronunciation;
import edu.cmu.sphinx.linguist.dictionary.Word;
import edu.cmu.sphinx.util.props.PropertySheet;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The words of the language model, as it wants to be given them. It is made for recognising speech
 * and would else load a dictionary of sounds, which statistics of spellings have no use for.
 */
final class Vocabulary implements Dictionary {

  private static final Pronunciation[] NOT_SAID = {};

  private final Map<String, Word> words = new ConcurrentHashMap<>();

  @Override
  public Word getWord(String spelling) {
    Word known = words.get(spelling);
    return known != null ? known : added(new Word(spelling, NOT_SAID, false));
  }

  private Word added(Word word) {
    Word earlier = words.putIfAbsent(word.getSpelling(), word);
    return earlier == null ? word : earlier;
  }

  @Override
  public Word getSentenceStartWord() {
    return getWord(SENTENCE_START_SPELLING);
  }

  @Override
  public Word getSentenceEndWord() {
    return getWord(SENTENCE_END_SPELLING);
  }

  @Override
  public Word getSilenceWord() {
    return getWord(SILENCE_SPELLING);
  }

  @Override
  public Word[] getFillerWords() {
    return new Word[0];
  }

  @Override
  public void allocate() {
    // There is nothing to load.
  }

  @Override
  public void deallocate() {
    // There is nothing to free.
  }

  @Override
  public void newProperties(PropertySheet sheet) {
    // It has no settings.
  }
}
