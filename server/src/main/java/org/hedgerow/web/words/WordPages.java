package org.hedgerow.web.words;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.Canonical;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.MeaningWords;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.page.ShownPicture;
import org.hedgerow.web.page.SpokenWord;
import org.hedgerow.web.page.WordFinding;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.SpellingReader;
import org.hedgerow.web.query.ValidationErrors;
import org.hedgerow.web.view.EditionLine;

/** The pages of single words. */
public final class WordPages {

  private final Editions editions;
  private final PageWriter writer;

  public WordPages(Editions editions, PageWriter writer) {
    this.editions = editions;
    this.writer = writer;
  }

  public void show(Context context) {
    Parameters parameters =
        AccentQuestion.read(context, List.of(ChosenAccents.PARAMETER, EditionChoice.PARAMETER));
    Lexicon lexicon = EditionChoice.of(editions, parameters);
    Optional<String> edition = parameters.text(EditionChoice.PARAMETER);
    ChosenAccents accents = AccentQuestion.accents(lexicon, parameters, ChosenAccents.PARAMETER);
    String spelling = spelling(context.pathParam("spelling"));
    if (!spelling.equals(context.pathParam("spelling"))) {
      Canonical.redirect(
          context,
          ListAddress.inEdition(ListAddress.ofWord(spelling, accents.parameter()), edition));
      return;
    }
    WordPage page = page(lexicon, spelling, accents, edition);
    context.status(lexicon.word(spelling).isPresent() ? 200 : 404);
    writer.write(context, "words/word.jte", Map.of("page", page));
  }

  private static String spelling(String typed) {
    ValidationErrors errors = ValidationErrors.ofQuery();
    Optional<String> spelling = new SpellingReader(errors).read(PageQuestion.WORD, typed);
    errors.throwIfAny();
    return spelling.orElseThrow();
  }

  private WordPage page(
      Lexicon lexicon, String spelling, ChosenAccents accents, Optional<String> edition) {
    CheckedWord subject = lexicon.subject(spelling);
    Check check =
        new WordChecker(lexicon.catalogue()).check(subject, Standard.basic(), accents.tags());
    return new WordPage(
        spelling,
        subject.known(),
        subject.known() ? List.of() : in(edition, near(spelling, lexicon)),
        accents.names(),
        accents.first().tag(),
        in(edition, others(spelling, accents)),
        SpokenWord.all(subject, lexicon, accents.first().tag(), Standard.basic(), List.of()),
        lexicon.word(spelling).flatMap(lexicon.pictures()::of).map(ShownPicture::of),
        lexicon.word(spelling).map(WordPages::facts).orElse(List.of()),
        in(edition, new FittingLists(lexicon, accents.tags()).of(subject)),
        check.findings().stream().map(finding -> WordFinding.of(spelling, finding)).toList(),
        history(lexicon, spelling),
        OldEdition.of(
            lexicon, editions.newest(), ListAddress.ofWord(spelling, accents.parameter())));
  }

  private static List<FittingList> in(Optional<String> edition, List<FittingList> fits) {
    return fits.stream().map(fit -> fit.in(edition)).toList();
  }

  private List<EditionLine> history(Lexicon lexicon, String spelling) {
    return lexicon
        .word(spelling)
        .filter(word -> word.since() > lexicon.firstEdition())
        .map(word -> editions.log().ofWord(spelling, lexicon.edition()))
        .orElse(List.of())
        .stream()
        .map(EditionLine::of)
        .toList();
  }

  /** The same word in each other accent. */
  private static List<FittingList> others(String spelling, ChosenAccents accents) {
    return accents.all().stream()
        .filter(each -> !accents.chosen().equals(List.of(each)))
        .map(each -> new ChosenAccents(accents.all(), List.of(each)))
        .map(each -> new FittingList(each.names(), ListAddress.ofWord(spelling, each.parameter())))
        .toList();
  }

  private static List<FittingList> near(String spelling, Lexicon lexicon) {
    return lexicon.nearby(spelling).stream()
        .map(near -> new FittingList(near, ListAddress.ofWord(near)))
        .toList();
  }

  private static List<String> facts(Word word) {
    List<String> facts = new ArrayList<>();
    facts.add(word.syllables() == 1 ? "One syllable." : word.syllables() + " syllables.");
    facts.add(commonness(word.commonness()));
    facts.add(
        word.status() == Status.APPROVED
            ? "Approved by experienced teachers."
            : "From a dictionary; no teacher has approved it yet.");
    word.tags().forEach(tag -> facts.add(tag(tag)));
    return List.copyOf(facts);
  }

  private static String commonness(int commonness) {
    return switch (commonness) {
      case 5 -> "Among the commonest words.";
      case 4 -> "A common word.";
      case 3 -> "A fairly common word.";
      case 2 -> "A usual word.";
      default -> "A rare word; lists leave it out unless they are asked.";
    };
  }

  private static String tag(Tag tag) {
    return switch (tag.kind()) {
      case Tag.NAME -> "Only a name: lists leave it out.";
      case Tag.NOT_FOR_CHILDREN -> "Not for small children: lists leave it out.";
      case Tag.BASE -> "A form of %s (%s).".formatted(tag.value(), tag.reason());
      case Tag.PART_OF_SPEECH ->
          "Used as %s (%s)."
              .formatted(
                  tag.value().replace("function", "a little word").replace(" ", ", "),
                  tag.reason());
      case Tag.MEANING ->
          "About %s (%s).".formatted(MeaningWords.of(tag.value().replace(" ", ",")), tag.reason());
      case Tag.PICTURABLE -> picturable(tag);
      case Tag.PICTURE -> "It has a picture.";
      case Tag.STARTER -> "In the starter set: %s.".formatted(tag.reason());
      case Tag.REGION ->
          "Spelt so only in %s English (%s): lists for other accents leave it out."
              .formatted(tag.value().equals("american") ? "American" : "British", tag.reason());
      case Tag.INFLECTED ->
          "A form of %s (%s): lists leave such forms out.".formatted(tag.value(), tag.reason());
      default -> tag.kind().toLowerCase(Locale.ROOT) + ": " + tag.value();
    };
  }

  private static String picturable(Tag tag) {
    String how =
        switch (tag.value()) {
          case "3" -> "Easy to show in a picture";
          case "2" -> "Can be drawn";
          case "1" -> "Hard to draw";
          default -> "Can't be drawn";
        };
    return "%s (%s).".formatted(how, tag.reason());
  }
}
