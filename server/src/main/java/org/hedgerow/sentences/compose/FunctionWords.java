package org.hedgerow.sentences.compose;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Words as pieces of a sentence, and those that hold it together, where they can be read. */
final class FunctionWords {

  private static final List<String> MODALS = List.of("can", "will", "must", "may", "might");

  /** Children meet the others seldom: they are worth it only where they hold the phonogram. */
  private static final List<String> DEFAULT_MODALS = List.of("can", "can", "will", "must");

  private static final List<String> NUMBERS =
      List.of("two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "twelve");

  private static final List<String> DEFAULT_NUMBERS = List.of("two", "three", "six", "ten");

  private final Function<String, WordUse> uses;
  private final WordPool<PhraseWord> modals;
  private final WordPool<PhraseWord> numbers;
  private final Map<Closing.After, WordPool<Phrase>> closings = new EnumMap<>(Closing.After.class);

  /**
   * @param uses what a word in lower case is good for
   */
  FunctionWords(Function<String, WordUse> uses, List<Closing> closings) {
    this.uses = uses;
    this.modals = new WordPool<>(List.of(), targets(MODALS), readable(DEFAULT_MODALS).toList());
    this.numbers = new WordPool<>(List.of(), targets(NUMBERS), readable(DEFAULT_NUMBERS).toList());
    for (Closing.After after : Closing.After.values()) {
      this.closings.put(
          after,
          phrases(
              closings.stream()
                  .filter(closing -> closing.after().contains(after))
                  .map(Closing::text)
                  .toList()));
    }
  }

  private List<PhraseWord> targets(List<String> texts) {
    return readable(texts).filter(PhraseWord::target).toList();
  }

  private Stream<PhraseWord> readable(List<String> texts) {
    return texts.stream().flatMap(text -> word(text).stream());
  }

  /** Words before a verb that say that it can, will or must be done. */
  WordPool<PhraseWord> modals() {
    return modals;
  }

  /** Numbers before nouns. */
  WordPool<PhraseWord> numbers() {
    return numbers;
  }

  /** What may end a sentence so far. */
  WordPool<Phrase> closings(Closing.After after) {
    return closings.getOrDefault(after, WordPool.empty());
  }

  /** Those that can be read. */
  WordPool<Phrase> phrases(List<String> texts) {
    List<Phrase> all = texts.stream().flatMap(text -> words(text).stream()).toList();
    return new WordPool<>(
        List.of(),
        all.stream().filter(phrase -> phrase.targets() > 0).toList(),
        all.stream().filter(phrase -> phrase.targets() == 0).toList());
  }

  /** A word that only holds the sentence together; empty if it can't be read. */
  Optional<PhraseWord> word(String text) {
    return piece(text, "");
  }

  /** Such words, with spaces between; empty if one of them can't be read. */
  Optional<Phrase> words(String text) {
    List<String> texts = List.of(text.split(" "));
    List<PhraseWord> pieces = readable(texts).toList();
    return pieces.size() < texts.size() ? Optional.empty() : Optional.of(new Phrase(pieces));
  }

  /** A word that means something; empty if there is none or it can't be read. */
  Optional<PhraseWord> content(String text, String lemma) {
    return text.isEmpty() ? Optional.empty() : piece(text, lemma);
  }

  /** Words as somebody wrote them, with commas; empty if one of them can't be read. */
  Optional<Phrase> written(List<String> texts, Lemmas lemmas) {
    List<PhraseWord> pieces =
        texts.stream().flatMap(text -> written(text, lemmas).stream()).toList();
    return pieces.size() < texts.size() ? Optional.empty() : Optional.of(new Phrase(pieces));
  }

  private Optional<PhraseWord> written(String text, Lemmas lemmas) {
    if (!text.endsWith(",")) {
      return piece(text, lemmas.of(text));
    }
    String word = text.substring(0, text.length() - 1);
    return piece(word, lemmas.of(word)).map(PhraseWord::withComma);
  }

  /** A word with the phonogram counts as one that means something, wherever it stands. */
  private Optional<PhraseWord> piece(String text, String lemma) {
    WordUse use = uses.apply(text.toLowerCase(Locale.ROOT));
    String meant = lemma.isEmpty() && use == WordUse.TARGET ? text : lemma;
    return use.isAllowed()
        ? Optional.of(new PhraseWord(text, meant, use == WordUse.TARGET, use == WordUse.SIGHT))
        : Optional.empty();
  }
}
