package org.hedgerow.review.curriculum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.review.Given;
import org.jspecify.annotations.Nullable;

/**
 * A set of sight words as somebody writes it.
 *
 * @param words as they were given, but in lower case, each once, with plain apostrophes
 */
public record SightWordsDraft(String name, String title, String note, List<String> words)
    implements SetDraft<SightWords> {
  /** More than the longest lists in common use have; no source. */
  static final int MAX_WORDS = 1_000;

  private static final int MAX_WORD_LENGTH = 40;
  private static final int MAX_ERRORS = 10;

  public SightWordsDraft(
      @Nullable String name,
      @Nullable String title,
      @Nullable String note,
      @Nullable List<String> words) {
    this.name = Given.text(name);
    this.title = Given.text(title);
    this.note = Given.text(note);
    this.words = Given.list(words).stream().map(SightWordsDraft::plain).distinct().toList();
  }

  private static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replace('’', '\'');
  }

  public static SightWordsDraft of(SightWords set) {
    return new SightWordsDraft(set.name(), set.title(), set.note(), set.words());
  }

  /** From words with spaces, commas or ends of lines between them. */
  public static List<String> words(String text) {
    return Arrays.stream(text.split("[\\s,;]+")).filter(word -> !word.isEmpty()).toList();
  }

  /** The other way round, with a space between. */
  public String wordsInText() {
    return String.join(" ", words);
  }

  @Override
  public List<FieldError> contentErrors(Catalogue catalogue) {
    List<FieldError> errors = new ArrayList<>();
    if (name.equals(SightWordSets.NO_WORDS)) {
      errors.add(
          new FieldError(
              "name", "“%s” stands for no sight words at all.".formatted(SightWordSets.NO_WORDS)));
    }
    if (words.isEmpty() || words.size() > MAX_WORDS) {
      errors.add(new FieldError("words", "From 1 to %,d words.".formatted(MAX_WORDS)));
    }
    words.stream()
        .filter(word -> !SightWords.isWord(word) || word.length() > MAX_WORD_LENGTH)
        .limit(MAX_ERRORS)
        .map(SightWordsDraft::error)
        .forEach(errors::add);
    return errors;
  }

  private static FieldError error(String word) {
    String shown =
        word.length() > MAX_WORD_LENGTH ? word.substring(0, MAX_WORD_LENGTH) + "…" : word;
    return new FieldError(
        "words",
        "“%s” is no word of up to %d letters a to z, perhaps with an apostrophe as in don't."
            .formatted(shown, MAX_WORD_LENGTH));
  }

  @Override
  public Map<String, Object> content() {
    return Map.of("words", wordsInText());
  }

  @Override
  public SightWords toSet(Catalogue catalogue) {
    return new SightWords(name, title, words, note);
  }
}
