package org.hedgerow.web.words;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.web.http.BodyParts;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.RulesReader;
import org.hedgerow.web.query.SpellingReader;
import org.hedgerow.web.query.TaughtReader;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.query.ValidationErrors;
import org.hedgerow.web.view.CheckView;

/** {@code POST /word-checks}: may these words be used? */
final class WordChecks {

  private static final int MAX_WORDS = 500;

  private WordChecks() {}

  /** The words judged. */
  record View(int edition, Query query, List<CheckView> checks) {}

  /** What they were measured by, with all defaults filled in. */
  record Query(
      Optional<String> phonogram,
      OptionalInt value,
      List<String> accent,
      String rules,
      List<String> taught) {
    /** The older name, for those who read it. */
    @JsonProperty
    List<String> accents() {
      return accent;
    }
  }

  /**
   * @throws org.hedgerow.web.query.InvalidQueryException with all that is wrong
   */
  static View answer(Lexicon lexicon, WordChecksBody body, ValidationErrors errors) {
    Optional<Correspondence> target =
        BodyParts.target(lexicon, body.phonogram(), body.value(), errors);
    List<String> accents = BodyParts.accents(lexicon, body.accent(), body.accents(), errors);
    ReadingRules rules =
        new RulesReader(lexicon.plans().rules(), errors)
            .read("rules", Optional.ofNullable(body.rules()));
    TaughtReader taughtReader = new TaughtReader(lexicon, accents.get(0), errors);
    Set<Correspondence> taught =
        taughtReader.readEach("taught", Optional.ofNullable(body.taught()).orElse(List.of()));
    List<String> words = words(body, errors);
    errors.throwIfAny();
    Standard standard = new Standard(rules, target.map(Set::of).orElse(Set.of()), taught);
    return new View(
        lexicon.edition(),
        new Query(
            target.map(each -> each.grapheme().text()),
            target.map(Correspondence::value).orElse(OptionalInt.empty()),
            accents,
            rules.label(),
            taughtReader.labels(taught)),
        checks(lexicon, words, standard, accents));
  }

  private static List<CheckView> checks(
      Lexicon lexicon, List<String> words, Standard standard, List<String> accents) {
    WordChecker checker = new WordChecker(lexicon.catalogue());
    return words.stream()
        .map(word -> checker.check(lexicon.subject(word), standard, accents))
        .map(CheckView::of)
        .toList();
  }

  private static List<String> words(WordChecksBody body, ValidationErrors errors) {
    List<String> typed = Optional.ofNullable(body.words()).orElse(List.of());
    if (typed.isEmpty()) {
      errors.invalid("words", "There are no words to check. Send at least one in words.");
    }
    if (typed.size() > MAX_WORDS) {
      errors.add(tooMany(typed.size()));
      return List.of();
    }
    List<String> words = new ArrayList<>();
    SpellingReader reader = new SpellingReader(errors);
    for (int i = 0; i < typed.size(); i++) {
      reader.read("words[%d]".formatted(i), typed.get(i)).ifPresent(words::add);
    }
    return words;
  }

  private static ValidationError tooMany(int count) {
    return ValidationError.of(
        ProblemType.TOO_MANY_WORDS,
        "words",
        "There are %d words. Send at most %d at once.".formatted(count, MAX_WORDS));
  }
}
