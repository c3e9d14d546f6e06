package org.hedgerow.web.words;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hedgerow.lexicon.Rime;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.ParameterValues;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.SpellingReader;
import org.hedgerow.web.query.ValidationError;

/**
 * The rimes of a word of the bank: words that end like it are asked for.
 *
 * @param rimes as it is said in the accents of the query
 */
record RimeFilter(String word, Set<Rime> rimes) {
  private static final String NAME = "rime";

  static Optional<RimeFilter> read(String text, ParameterValues before) {
    return new SpellingReader(before.given().errors())
        .read(NAME, text)
        .flatMap(spelling -> known(spelling, before));
  }

  private static Optional<RimeFilter> known(String spelling, ParameterValues before) {
    Optional<RimeFilter> found =
        before
            .lexicon()
            .word(spelling)
            .map(word -> new RimeFilter(spelling, rimes(word, before)))
            .filter(rime -> !rime.rimes().isEmpty());
    if (found.isEmpty()) {
      before.given().errors().add(unknown(spelling));
    }
    return found;
  }

  private static Set<Rime> rimes(Word word, ParameterValues before) {
    return before.get(WordParameters.ACCENT).stream()
        .flatMap(accent -> word.saidIn(accent.accent().tag()).stream())
        .map(Pronunciation::alignment)
        .flatMap(Optional::stream)
        .flatMap(alignment -> Rime.of(alignment).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  private static ValidationError unknown(String spelling) {
    return ValidationError.of(
        ProblemType.INVALID_PARAMETER,
        NAME,
        "The bank doesn't know how %s is said here. Name a word that it holds, such as cat."
            .formatted(Quoted.of(spelling)));
  }
}
