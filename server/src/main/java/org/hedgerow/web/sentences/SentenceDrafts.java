package org.hedgerow.web.sentences;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.TargetLetters;
import org.hedgerow.sentences.compose.ComposedSentences;
import org.hedgerow.sentences.compose.CompositionRequest;
import org.hedgerow.sentences.compose.SentenceKind;
import org.hedgerow.web.query.SpellingReader;
import org.hedgerow.web.query.ValidationErrors;

/** {@code POST /sentence-drafts}: sentences for a phonogram value, made anew. */
final class SentenceDrafts {

  private static final int DEFAULT_COUNT = 10;
  private static final int MAX_SENTENCES = 50;
  private static final int MAX_WORDS = 5;

  private final SentenceOrders orders;

  SentenceDrafts(SentenceOrders orders) {
    this.orders = orders;
  }

  /**
   * The sentences.
   *
   * @param missing what to do where there are fewer than were asked for; left out where there are
   *     enough
   */
  record View(
      int edition, DraftQuery query, List<SentenceView> sentences, Optional<Missing> missing) {}

  /** What was asked for, with all defaults filled in. */
  record DraftQuery(
      @JsonUnwrapped SentenceQuery standard,
      int count,
      long seed,
      List<String> words,
      List<String> kinds) {}

  record SentenceView(String text, String kind, SentenceCheckView check) {}

  /**
   * @param targets the words with the phonogram that can be used in composed sentences
   */
  record Missing(String message, List<String> targets) {}

  /**
   * @throws org.hedgerow.web.query.InvalidQueryException with all that is wrong
   */
  View answer(Context context, Lexicon lexicon, SentenceDraftsBody body, ValidationErrors errors) {
    SentenceStandardBody.Read read = body.standard().read(lexicon, errors);
    if (body.phonogram() == null) {
      errors.invalid("phonogram", "Say which phonogram the sentences are for.");
    }
    int count =
        SentenceStandardBody.number("count", body.count(), DEFAULT_COUNT, 1, MAX_SENTENCES, errors);
    long seed = Optional.ofNullable(body.seed()).orElse(1L);
    Set<String> words = words(body, errors);
    Set<SentenceKind> kinds = kinds(body, errors);
    errors.throwIfAny();
    CompositionRequest order = new CompositionRequest(count, seed, words, kinds);
    return view(
        lexicon,
        read.standard(),
        new DraftQuery(
            read.query(),
            count,
            seed,
            List.copyOf(words),
            kinds.stream().map(SentenceKind::label).toList()),
        orders.compose(context, order, lexicon, read.standard()));
  }

  private static View view(
      Lexicon lexicon, SentenceStandard standard, DraftQuery query, ComposedSentences drafts) {
    SentenceChecker checker = new SentenceChecker(lexicon, standard);
    TargetLetters letters = SentenceChecks.letters(lexicon, standard);
    List<SentenceView> sentences =
        drafts.sentences().stream()
            .map(
                draft ->
                    new SentenceView(
                        draft.text(),
                        draft.kind().label(),
                        SentenceCheckView.of(checker.check(draft.text()), letters)))
            .toList();
    return new View(lexicon.edition(), query, sentences, missing(query, drafts));
  }

  private static Optional<Missing> missing(DraftQuery query, ComposedSentences drafts) {
    int made = drafts.sentences().size();
    if (made >= query.count()) {
      return Optional.empty();
    }
    String message =
        "%s of %d sentences could be made: %d words with the phonogram can be used in them."
                .formatted(
                    made == 0 ? "None" : "Only " + made, query.count(), drafts.targets().size())
            + " Allow longer sentences, fewer targets or more taught phonograms, or write one.";
    return Optional.of(new Missing(message, List.copyOf(new TreeSet<>(drafts.targets()))));
  }

  private static Set<String> words(SentenceDraftsBody body, ValidationErrors errors) {
    List<String> typed = Optional.ofNullable(body.words()).orElse(List.of());
    if (typed.size() > MAX_WORDS) {
      errors.invalid("words", "At most %d words can be asked for.".formatted(MAX_WORDS));
      return Set.of();
    }
    List<String> words = new ArrayList<>();
    SpellingReader reader = new SpellingReader(errors);
    for (int i = 0; i < typed.size(); i++) {
      reader.read("words[%d]".formatted(i), typed.get(i)).ifPresent(words::add);
    }
    return new TreeSet<>(words);
  }

  private static Set<SentenceKind> kinds(SentenceDraftsBody body, ValidationErrors errors) {
    List<String> labels = Optional.ofNullable(body.kinds()).orElse(List.of());
    Set<SentenceKind> kinds = EnumSet.noneOf(SentenceKind.class);
    for (int i = 0; i < labels.size(); i++) {
      Optional<SentenceKind> kind = SentenceKind.labelled(labels.get(i));
      kind.ifPresent(kinds::add);
      if (kind.isEmpty()) {
        errors.invalid("kinds[%d]".formatted(i), "A kind is one of statement, question, command.");
      }
    }
    return kinds.isEmpty() ? EnumSet.copyOf(Arrays.asList(SentenceKind.values())) : kinds;
  }
}
