package org.hedgerow.lexicon;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a word does in a sentence. */
public enum PartOfSpeech {
  NOUN,
  VERB,
  ADJECTIVE,
  ADVERB,
  /** Articles, pronouns, prepositions, conjunctions, auxiliaries and exclamations. */
  FUNCTION;

  /** The name in tags and queries, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The part of speech with this label, if there is one. */
  public static Optional<PartOfSpeech> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
