package org.hedgerow.lexicon;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Guesser;
import org.hedgerow.phonics.Pronunciation;

/**
 * PronunciationGuesses how words are said by what letters say in common words, accent by accent.
 */
final class PronunciationGuesses {
  private static final String GUESS = "guess";

  /** An accent is not guessed in from fewer words than this, but as its parent. */
  private static final int ENOUGH = 1000;

  private final Speech speech;
  private final Map<String, Lazy<Optional<Guesser>>> guessers = new HashMap<>();

  /**
   * @param words from which it learns, in each accent when it is first asked
   */
  PronunciationGuesses(Speech speech, List<Word> words) {
    this.speech = speech;
    for (AccentCatalogue each : speech.accents()) {
      guessers.put(each.accent().tag(), new Lazy<>(() -> learn(each, words)));
    }
  }

  private static Optional<Guesser> learn(AccentCatalogue catalogue, List<Word> words) {
    String accent = catalogue.accent().tag();
    List<Alignment> known =
        words.stream()
            .filter(word -> word.commonness() >= WordQuery.DEFAULT_COMMONNESS)
            .flatMap(word -> word.saidIn(accent).stream())
            .filter(pronunciation -> pronunciation.accent().equals(accent))
            .flatMap(pronunciation -> pronunciation.alignment().stream())
            .toList();
    return known.size() < ENOUGH ? Optional.empty() : Optional.of(new Guesser(catalogue, known));
  }

  /**
   * @throws IllegalArgumentException if there is no such accent
   */
  Optional<Pronunciation> guess(String spelling, String accent) {
    AccentTools tools = speech.tools(accent);
    return Optional.ofNullable(guessers.get(accent))
        .flatMap(Lazy::get)
        .flatMap(learned -> learned.guess(spelling))
        .map(sounds -> Pronunciation.aligned(tools.aligner(), spelling, sounds, "", GUESS, false));
  }
}
