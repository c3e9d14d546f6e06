package org.hedgerow.sentences.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence written by hand with words to choose from, any of which make sense with any others:
 * <em>The [goat|toad] sat on a [boat|road].</em> A choice may have several words, or none.
 *
 * @param slots what may stand in each place, one after the other: each a list of words
 */
public record Scene(SentenceKind kind, List<List<List<String>>> slots) {

  private static final Pattern PLACE = Pattern.compile("\\[([^\\[\\]]*)](,?)|[^\\s\\[\\]]+");
  private static final String CHOICE = "\\|";

  public Scene {
    slots = slots.stream().map(List::copyOf).toList();
    if (slots.isEmpty()) {
      throw new IllegalArgumentException("a scene must have words");
    }
  }

  /**
   * @param text without capital and final mark; names and <em>I</em> as they are written
   * @throws IllegalArgumentException if the brackets don't match
   */
  public static Scene of(SentenceKind kind, String text) {
    List<List<List<String>>> slots = new ArrayList<>();
    Matcher place = PLACE.matcher(text);
    int read = 0;
    while (place.find()) {
      requireBlank(text, read, place.start());
      slots.add(
          place.group(1) == null
              ? List.of(words(place.group()))
              : choices(place.group(1), place.group(2)));
      read = place.end();
    }
    requireBlank(text, read, text.length());
    return new Scene(kind, slots);
  }

  private static void requireBlank(String text, int from, int to) {
    if (!text.substring(from, to).isBlank()) {
      throw new IllegalArgumentException("brackets that don't match: " + text);
    }
  }

  /**
   * @param comma one that follows any of the choices, or an empty text
   */
  private static List<List<String>> choices(String text, String comma) {
    return List.of(text.split(CHOICE, -1)).stream()
        .map(choice -> words(choice.strip() + comma))
        .toList();
  }

  private static List<String> words(String text) {
    return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
  }
}
