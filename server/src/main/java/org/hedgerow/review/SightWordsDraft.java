package org.hedgerow.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.reading.SightWordSets;
import org.hedgerow.reading.SightWords;
import org.jspecify.annotations.Nullable;

/**
 * A set of sight words as somebody writes it.
 *
 * @param words as they were given, but in lower case, each once, with plain apostrophes
 */
public record SightWordsDraft(String name, String title, String note, List<String> words) {
  /** More than the longest lists in common use have; no source. */
  static final int MOST_WORDS = 1_000;

  private static final int LONGEST_WORD = 40;
  private static final int MOST_FAULTS = 10;

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

  List<FieldFault> faults() {
    List<FieldFault> faults = new ArrayList<>(NamedSets.faults(name, title, note));
    if (name.equals(SightWordSets.NO_WORDS)) {
      faults.add(
          new FieldFault(
              "name", "“%s” stands for no sight words at all.".formatted(SightWordSets.NO_WORDS)));
    }
    if (words.isEmpty() || words.size() > MOST_WORDS) {
      faults.add(new FieldFault("words", "From 1 to %,d words.".formatted(MOST_WORDS)));
    }
    words.stream()
        .filter(word -> !SightWords.isWord(word) || word.length() > LONGEST_WORD)
        .limit(MOST_FAULTS)
        .map(SightWordsDraft::fault)
        .forEach(faults::add);
    return faults;
  }

  private static FieldFault fault(String word) {
    String shown = word.length() > LONGEST_WORD ? word.substring(0, LONGEST_WORD) + "…" : word;
    return new FieldFault(
        "words",
        "“%s” is no word of up to %d letters a to z, perhaps with an apostrophe as in don't."
            .formatted(shown, LONGEST_WORD));
  }

  SightWords set() {
    return new SightWords(name, title, words, note);
  }

  /** Another for every other content, so that nobody overwrites what they haven't seen. */
  public static String mark(Optional<SightWords> set) {
    return set.map(SightWordsDraft::of).map(NamedSets::mark).orElse("");
  }
}
