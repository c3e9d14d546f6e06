package org.hedgerow.web.sentences;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.TargetLetters;
import org.hedgerow.sentences.compose.ComposedSentence;
import org.hedgerow.sentences.compose.ComposedSentences;
import org.hedgerow.sentences.compose.CompositionRequest;
import org.hedgerow.sentences.compose.SentenceKind;
import org.hedgerow.web.page.Choice;

/** Composes sentences and puts them on a page. */
final class SentenceDraftsMaker {

  private static final String WORDS = "words";
  private static final String SEED = "seed";
  private static final String KIND = "kind";
  private static final int COUNT = 10;
  private static final int MAX_KEPT = 50;
  private static final int MAX_LETTERS = 300;
  private static final int MAX_WORDS = 3;

  static final List<String> PARAMETERS = List.of(WORDS, SEED, KIND, SentenceQuestion.KEEP);

  private final SentenceOrders orders;

  SentenceDraftsMaker(SentenceOrders orders) {
    this.orders = orders;
  }

  SentenceDraftsPage page(Context context, SentenceQuestion question) {
    int seed = SentenceQuestion.number(question.parameters(), SEED, 1, 0, 999_999);
    Optional<SentenceKind> kind = question.parameters().text(KIND).flatMap(SentenceKind::labelled);
    String asked = question.parameters().text(WORDS).orElse("");
    Set<String> words = words(question, asked);
    question.parameters().errors().throwIfAny();
    List<String> kept =
        context.queryParams(SentenceQuestion.KEEP).stream()
            .map(String::strip)
            .filter(text -> !text.isEmpty() && text.length() <= MAX_LETTERS)
            .distinct()
            .limit(MAX_KEPT)
            .toList();
    ComposedSentences drafts =
        question.value().isEmpty()
            ? new ComposedSentences(List.of(), 0, Set.of())
            : orders.compose(
                context,
                new CompositionRequest(COUNT + kept.size(), seed, words, kinds(kind)),
                question.lexicon(),
                question.sentenceStandard());
    List<String> made =
        drafts.sentences().stream()
            .map(ComposedSentence::text)
            .filter(text -> !kept.contains(text))
            .limit(COUNT)
            .toList();
    return new SentenceDraftsPage(
        question.fields(),
        asked,
        seed + 1L,
        choices(kind),
        lines(question, kept),
        lines(question, made),
        missing(question, made.size(), drafts),
        question.accents().tags());
  }

  private static Set<SentenceKind> kinds(Optional<SentenceKind> kind) {
    return kind.map(Set::of).orElseGet(() -> Set.of(SentenceKind.values()));
  }

  private static List<Choice> choices(Optional<SentenceKind> chosen) {
    return Stream.concat(
            Stream.of(new Choice("", "Any kind", chosen.isEmpty())),
            Arrays.stream(SentenceKind.values())
                .map(
                    kind ->
                        new Choice(
                            kind.label(),
                            name(kind),
                            chosen.filter(each -> each == kind).isPresent())))
        .toList();
  }

  private static String name(SentenceKind kind) {
    return switch (kind) {
      case STATEMENT -> "Statements";
      case QUESTION -> "Questions";
      case COMMAND -> "Commands";
    };
  }

  private static Set<String> words(SentenceQuestion question, String asked) {
    Set<String> words =
        Arrays.stream(asked.toLowerCase(Locale.ROOT).split("[\\s,]+", 0))
            .filter(word -> !word.isEmpty())
            .collect(Collectors.toCollection(TreeSet::new));
    if (words.size() > MAX_WORDS || !words.stream().allMatch(word -> word.matches("[a-z]{1,40}"))) {
      question
          .parameters()
          .errors()
          .invalid(
              WORDS,
              "Name at most %d words, in letters a to z, with spaces between."
                  .formatted(MAX_WORDS));
    }
    return words;
  }

  private static List<SentenceDraftsPage.Line> lines(
      SentenceQuestion question, List<String> texts) {
    SentenceChecker checker = new SentenceChecker(question.lexicon(), question.sentenceStandard());
    SentenceWords words =
        new SentenceWords(
            new TargetLetters(
                question.lexicon(), question.standard(), question.accents().first().tag()));
    return texts.stream()
        .map(text -> new SentenceDraftsPage.Line(words.of(checker.check(text)), text))
        .toList();
  }

  private static String missing(SentenceQuestion question, int made, ComposedSentences drafts) {
    if (question.value().isEmpty() || made >= COUNT) {
      return "";
    }
    String known = String.join(", ", new TreeSet<>(drafts.targets()));
    return (made == 0 ? "No sentence could be made. " : "There are no more sentences than these. ")
        + (known.isEmpty()
            ? "No word with this phonogram is known well enough to be used in them."
            : "These words can be used in them: " + known + ".")
        + " Allow longer sentences, name phonograms that were taught, or write one yourself.";
  }
}
