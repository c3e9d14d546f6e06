package org.hedgerow.web.sentences;

import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.reading.Standard;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.TargetLetters;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.page.TaughtValues;

/** Sentences: those of the bank, one's own, and new ones. */
public final class SentencePages implements RouteGroup {

  private static final String WORD = "word";
  private static final String TEXT = "text";
  private static final int MAX_LETTERS = 2000;

  private final Editions editions;
  private final PageWriter writer;
  private final SentenceDraftsMaker drafts;

  public SentencePages(Editions editions, SentenceOrders orders, PageWriter writer) {
    this.editions = editions;
    this.writer = writer;
    this.drafts = new SentenceDraftsMaker(orders);
  }

  @Override
  public void addTo(Routes routes) {
    routes.get("/sentences", this::list);
    routes.get("/sentences/check", this::check);
    routes.get("/sentences/make", this::make);
  }

  private void list(Context context) {
    SentenceQuestion question = SentenceQuestion.read(context, editions, List.of(WORD));
    writer.write(context, "sentences/sentences.jte", Map.of("page", page(question)));
  }

  private SentenceListPage page(SentenceQuestion question) {
    String word = question.parameters().text(WORD).orElse("").toLowerCase(Locale.ROOT);
    List<Sentence> found =
        new SentenceFilter(question.value(), question.accents().tags(), word, question.longest())
            .in(question.lexicon().sentences());
    return new SentenceListPage(
        question.fields(),
        word,
        found.size(),
        found.stream()
            .limit(SentenceListPage.MAX)
            .map(sentence -> line(question, sentence))
            .toList(),
        OldEdition.of(question.lexicon(), editions.newest(), question.addressNow("/sentences")));
  }

  private static SentenceListPage.Line line(SentenceQuestion question, Sentence sentence) {
    SentenceStandard standard =
        new SentenceStandard(
            Standard.of(sentence.value()),
            question.accents().tags(),
            question.sightWords(),
            0,
            question.longest());
    TargetLetters letters =
        new TargetLetters(
            question.lexicon(), standard.standard(), question.accents().first().tag());
    return new SentenceListPage.Line(
        new SentenceWords(letters)
            .of(new SentenceChecker(question.lexicon(), standard).check(sentence.text())),
        sentence.text(),
        TaughtValues.words(sentence.value()));
  }

  private void check(Context context) {
    SentenceQuestion question = SentenceQuestion.read(context, editions, List.of(TEXT));
    Optional<String> text = question.parameters().text(TEXT);
    if (text.filter(typed -> typed.length() > MAX_LETTERS).isPresent()) {
      question
          .parameters()
          .errors()
          .invalid(
              TEXT,
              "That is too long for one sentence. Send at most %d letters.".formatted(MAX_LETTERS));
      question.parameters().errors().throwIfAny();
    }
    SentenceCheckMaker maker = new SentenceCheckMaker(question);
    writer.write(
        context,
        "sentences/check.jte",
        Map.of("page", text.map(maker::of).orElseGet(maker::empty)));
  }

  private void make(Context context) {
    SentenceQuestion question =
        SentenceQuestion.read(context, editions, SentenceDraftsMaker.PARAMETERS);
    writer.write(context, "sentences/make.jte", Map.of("page", drafts.page(context, question)));
  }
}
