package org.hedgerow.language;

import edu.cmu.sphinx.linguist.WordSequence;
import edu.cmu.sphinx.linguist.dictionary.Dictionary;
import edu.cmu.sphinx.linguist.language.ngram.trie.NgramTrieModel;
import edu.cmu.sphinx.util.LogMath;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.hedgerow.sentences.compose.Plausibility;

/**
 * How plausible a sentence is by the generic US English trigram model of CMU Sphinx: 72,000 words,
 * BSD licence, from {@code de.sciss:sphinx4-data}. Loading takes about a second and 60 MB. Safe for
 * use by several threads, one after the other.
 */
public final class TrigramModel implements Plausibility {

  private static final String LOCATION = "/edu/cmu/sphinx/models/en-us/en-us.lm.bin";

  /** Less likely than any word that the model knows. */
  private static final double UNSEEN = -7;

  private static final int ORDER = 3;

  private final Vocabulary vocabulary;
  private final NgramTrieModel model;
  private final Set<String> known;

  private TrigramModel(Vocabulary vocabulary, NgramTrieModel model) {
    this.vocabulary = vocabulary;
    this.model = model;
    this.known = Set.copyOf(model.getVocabulary());
  }

  /** The model that comes with the program. */
  public static TrigramModel bundled() {
    URL location = TrigramModel.class.getResource(LOCATION);
    if (location == null) {
      throw new IllegalStateException("the language model is missing: " + LOCATION);
    }
    Logger.getLogger(NgramTrieModel.class.getName()).setLevel(Level.WARNING);
    Vocabulary vocabulary = new Vocabulary();
    NgramTrieModel model =
        new NgramTrieModel("", location, null, 0, false, ORDER, vocabulary, false, 1f, 1.0, 1f);
    try {
      model.allocate();
    } catch (IOException e) {
      throw new UncheckedIOException("the language model cannot be read", e);
    }
    return new TrigramModel(vocabulary, model);
  }

  @Override
  public double perWord(List<String> words) {
    List<String> sentence = new ArrayList<>(words.size() + 2);
    sentence.add(Dictionary.SENTENCE_START_SPELLING);
    sentence.addAll(words);
    sentence.add(Dictionary.SENTENCE_END_SPELLING);
    double sum = 0;
    for (int at = 1; at < sentence.size(); at++) {
      sum += known.contains(sentence.get(at)) ? logarithm(context(sentence, at)) : UNSEEN;
    }
    return sum / (sentence.size() - 1);
  }

  /** The word with those before it that the model knows, at most two. */
  private WordSequence context(List<String> sentence, int at) {
    int start = at;
    while (start > 0 && at - start < ORDER - 1 && known.contains(sentence.get(start - 1))) {
      start--;
    }
    return new WordSequence(
        sentence.subList(start, at + 1).stream().map(vocabulary::getWord).toList());
  }

  /** The model keeps a position of its own while it looks something up: one thread at a time. */
  private synchronized double logarithm(WordSequence words) {
    return LogMath.getLogMath().logToLn(model.getProbability(words)) / Math.log(10);
  }
}
