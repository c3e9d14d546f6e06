package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.FindingCode;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.page.ShownWord;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.QueryString;

/** The same list in two accents, side by side, at {@code /compare}. */
public final class ComparePages {

  private static final String ACCENT = ChosenAccents.PARAMETER;
  private static final String WITH = "with";
  private static final int MAX_REASONS = 2;
  private static final Map<String, String> DEFAULT = Map.of("phonogram", "ar", "value", "1");

  private final Editions editions;
  private final PageWriter writer;

  public ComparePages(Editions editions, PageWriter writer) {
    this.editions = editions;
    this.writer = writer;
  }

  /** The question for a comparison that begins with a list. */
  static QueryString asked(QueryString list, ChosenAccents accents) {
    QueryString rest = list.without(ACCENT);
    List<String> tags = accents.tags();
    if (!accents.parameter().isEmpty()) {
      rest = rest.with(ACCENT, tags.get(0));
    }
    return tags.size() > 1 ? rest.with(WITH, tags.get(1)) : rest;
  }

  public void show(Context context) {
    List<String> names = new ArrayList<>(WordParameters.NAMES);
    names.add(WITH);
    Parameters parameters = AccentQuestion.read(context, names);
    Lexicon lexicon = EditionChoice.of(editions, parameters);
    ChosenAccents all = AccentQuestion.accents(lexicon, parameters, ACCENT);
    Accent left = all.first();
    Accent right =
        parameters.text(WITH).isPresent()
            ? AccentQuestion.accents(lexicon, parameters, WITH).first()
            : other(all, left);
    Map<String, String> list = list(parameters);
    writer.write(
        context, "words/compare.jte", Map.of("page", page(lexicon, all.all(), left, right, list)));
  }

  /** The second accent named, else the first of the bank that is another. */
  private static Accent other(ChosenAccents named, Accent left) {
    List<Accent> from = named.chosen().size() > 1 ? named.chosen() : named.all();
    return from.stream().filter(each -> !each.equals(left)).findFirst().orElse(left);
  }

  /** What the list is about and how it is narrowed; where it begins doesn't matter. */
  private static Map<String, String> list(Parameters parameters) {
    Map<String, String> list = new LinkedHashMap<>();
    for (String name : WordParameters.NAMES) {
      if (!List.of(ACCENT, ParameterNames.AFTER, "limit", "differs-in").contains(name)) {
        parameters.text(name).ifPresent(value -> list.put(name, value));
      }
    }
    return list.isEmpty() ? DEFAULT : list;
  }

  private static Comparison page(
      Lexicon lexicon, List<Accent> all, Accent left, Accent right, Map<String, String> list) {
    WordRequest here = request(lexicon, left, list);
    WordRequest there = request(lexicon, right, list);
    List<Word> leftWords = WordList.all(lexicon, here);
    List<Word> rightWords = WordList.all(lexicon, there);
    Set<Word> inRight = new HashSet<>(rightWords);
    QueryString address = new QueryString(list);
    return new Comparison(
        topic(here),
        side(lexicon, all, left, right, leftWords, here, rightWords, there),
        side(lexicon, all, right, left, rightWords, there, leftWords, here),
        leftWords.stream().filter(inRight::contains).map(word -> tag(word, here)).toList(),
        address.parameters().entrySet().stream()
            .map(each -> new Choice(each.getValue(), each.getKey(), true))
            .toList(),
        ListAddress.ofList(address),
        advice(left, right, leftWords, rightWords, inRight));
  }

  private static WordRequest request(Lexicon lexicon, Accent accent, Map<String, String> list) {
    Map<String, List<String>> given = new LinkedHashMap<>();
    list.forEach((name, value) -> given.put(name, List.of(value)));
    given.put(ACCENT, List.of(accent.tag()));
    return WordRequest.read(lexicon, new Parameters(given, WordParameters.NAMES));
  }

  private static Comparison.Side side(
      Lexicon lexicon,
      List<Accent> all,
      Accent accent,
      Accent otherAccent,
      List<Word> words,
      WordRequest request,
      List<Word> otherWords,
      WordRequest other) {
    Set<Word> there = new HashSet<>(otherWords);
    List<Word> only = words.stream().filter(word -> !there.contains(word)).toList();
    WordChecker checker = new WordChecker(lexicon.catalogue());
    return new Comparison.Side(
        accent.name(),
        otherAccent.name(),
        all.stream().map(each -> new Choice(each.tag(), each.name(), each.equals(accent))).toList(),
        words.size(),
        only.size(),
        only.stream()
            .limit(Comparison.MAX)
            .map(word -> difference(word, request, other, checker))
            .toList());
  }

  private static AccentDifference difference(
      Word word, WordRequest request, WordRequest other, WordChecker checker) {
    Check check = checker.check(word.subject(), other.query().standard(), other.query().accents());
    return new AccentDifference(
        ShownWord.of(word, request.query().accents().get(0)).pieces(request.query().standard()),
        ListAddress.ofWord(word.spelling()),
        reasons(check));
  }

  /** That a word lacks the value is plain where another finding says what it has instead. */
  private static String reasons(Check check) {
    boolean saysOther =
        check.findings().stream().anyMatch(each -> each.code() == FindingCode.OTHER_VALUE);
    String reasons =
        check.findings().stream()
            .filter(each -> !saysOther || each.code() != FindingCode.NO_TARGET)
            .map(each -> sentence(each.message()))
            .distinct()
            .limit(MAX_REASONS)
            .collect(joining(" "));
    return reasons.isEmpty() ? "It is spelt in another way there, or left out." : reasons;
  }

  private static String sentence(String message) {
    String whole = message.endsWith(".") ? message : message + ".";
    return whole.startsWith("said ") ? "It is " + whole : whole;
  }

  private static WordTag tag(Word word, WordRequest request) {
    return new WordTag(
        word.spelling(),
        ShownWord.of(word, request.query().accents().get(0)).pieces(request.query().standard()),
        ListAddress.ofWord(word.spelling()),
        Optional.empty(),
        false);
  }

  private static String topic(WordRequest request) {
    Optional<Correspondence> value = request.phonogram();
    return value
        .map(each -> "%s as in %s".formatted(each.grapheme(), each.keyWord()))
        .or(() -> request.sound().map(sound -> "the sound /%s/".formatted(sound)))
        .orElse("words without a phonogram");
  }

  private static String advice(
      Accent left, Accent right, List<Word> here, List<Word> there, Set<Word> inRight) {
    if (left.equals(right)) {
      return "Both sides show the same accent. Choose another for one of them.";
    }
    if (here.isEmpty() && there.isEmpty()) {
      return "Neither accent has a word here. Choose a commoner phonogram, or let more words in.";
    }
    return here.stream().noneMatch(inRight::contains)
        ? "The two accents share no word here. For children with both, choose another phonogram."
        : "";
  }
}
