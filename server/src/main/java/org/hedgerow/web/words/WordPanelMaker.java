package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.Finding;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.LetterRun;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.ShownWord;
import org.hedgerow.web.page.SpokenWord;
import org.hedgerow.web.page.WordFinding;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.QueryString;
import org.hedgerow.web.query.SpellingReader;
import org.hedgerow.web.query.ValidationErrors;

/** Looks at a word closely, for the list of one request. */
final class WordPanelMaker {

  private final Lexicon lexicon;
  private final WordRequest request;
  private final List<Word> list;

  WordPanelMaker(Lexicon lexicon, WordRequest request, List<Word> list) {
    this.lexicon = lexicon;
    this.request = request;
    this.list = list;
  }

  WordPanel look(Optional<String> typed, QueryString here, Topic topic) {
    List<Choice> hidden =
        here.parameters().entrySet().stream()
            .map(parameter -> new Choice(parameter.getValue(), parameter.getKey(), true))
            .toList();
    String close = ListAddress.ofList(here);
    try {
      Optional<WordPanel.LookedAt> word =
          typed.map(WordPanelMaker::spelling).map(each -> at(each, topic, here));
      return new WordPanel(typed.orElse(""), "", word, hidden, close);
    } catch (InvalidQueryException invalid) {
      String error = invalid.problem().detail();
      return new WordPanel(typed.orElse(""), error, Optional.empty(), hidden, close);
    }
  }

  private static String spelling(String typed) {
    ValidationErrors errors = ValidationErrors.ofQuery();
    Optional<String> spelling = new SpellingReader(errors).read(PageQuestion.WORD, typed);
    errors.throwIfAny();
    return spelling.orElseThrow();
  }

  private WordPanel.LookedAt at(String spelling, Topic topic, QueryString here) {
    CheckedWord subject = lexicon.subject(spelling);
    Standard standard = request.query().standard();
    Check check =
        new WordChecker(lexicon.catalogue()).check(subject, standard, request.query().accents());
    List<Integer> concerned =
        check.findings().stream().flatMap(finding -> finding.letters().stream()).toList();
    String accent = request.query().accents().get(0);
    List<Integer> red = ShownWord.of(subject, accent).targetLetters(standard);
    return new WordPanel.LookedAt(
        spelling,
        LetterRun.of(spelling, red, check.findings().stream().map(Finding::letters).toList()),
        check.verdict(),
        headline(spelling, check.verdict(), topic),
        check.findings().stream().map(finding -> WordFinding.of(spelling, finding)).toList(),
        note(spelling, check),
        SpokenWord.all(subject, lexicon, accent, standard, concerned),
        check.verdict() == Verdict.PASS ? List.of() : fits(subject, here),
        check.guessed() ? near(spelling, here) : List.of(),
        lexicon.word(spelling).map(word -> address(word)));
  }

  /** Other lists that the word fits, or this one later. */
  private List<FittingList> fits(CheckedWord subject, QueryString here) {
    List<FittingList> fits = new FittingLists(lexicon, request.query().accents()).of(subject);
    Optional<FittingList> later = new OnceTaught(lexicon, request).of(subject, here);
    return Stream.concat(fits.stream().map(fit -> fit.in(edition())), later.stream()).toList();
  }

  private List<FittingList> near(String spelling, QueryString here) {
    return lexicon.nearby(spelling).stream()
        .map(near -> new FittingList(near, ListAddress.ofList(here.with(PageQuestion.WORD, near))))
        .toList();
  }

  private String address(Word word) {
    return ListAddress.inEdition(ListAddress.ofWord(word.spelling(), accents()), edition());
  }

  private Optional<String> edition() {
    return request.resolved().get(EditionChoice.PARAMETER);
  }

  private String accents() {
    return ChosenAccents.of(lexicon, request.query().accents()).parameter();
  }

  private static String headline(String spelling, Verdict verdict, Topic topic) {
    return switch (verdict) {
      case PASS -> "Yes, %s fits %s.".formatted(spelling, topic.purpose());
      case LOOK -> "Have a look at %s yourself before you use it.".formatted(spelling);
      case FAIL -> "No, %s doesn’t fit %s.".formatted(spelling, topic.purpose());
    };
  }

  private String note(String spelling, Check check) {
    if (check.verdict() != Verdict.PASS || isListed(spelling)) {
      return "";
    }
    return lexicon
        .word(spelling)
        .filter(word -> word.commonness() < request.query().commonness())
        .map(word -> "It is rarer than the words of this list, so the list leaves it out.")
        .orElse("The choices you have made leave it out of the list.");
  }

  private boolean isListed(String spelling) {
    return list.stream().anyMatch(word -> word.spelling().equals(spelling));
  }
}
