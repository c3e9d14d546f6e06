package org.hedgerow.web.words;

import com.fasterxml.jackson.annotation.JsonRawValue;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.web.query.ParameterNames;

/**
 * A list of words with the question it answers.
 *
 * @param words as JSON
 * @param next left out at the end of the list
 */
record WordListView(
    int edition,
    Map<String, Object> query,
    int total,
    @JsonRawValue String words,
    Optional<String> next) {

  static WordListView of(WordRequest request, WordList list, String words) {
    return new WordListView(request.edition(), query(request), list.total(), words, list.next());
  }

  private static Map<String, Object> query(WordRequest request) {
    Map<String, Object> query = request.values().json();
    request.after().ifPresent(cursor -> query.put(ParameterNames.AFTER, cursor));
    return query;
  }

  static List<WordView> words(WordRequest request, WordList list, Pictures pictures) {
    return list.words().stream()
        .map(
            word ->
                WordView.of(
                    word,
                    pictures,
                    request.query().accents(),
                    request.query().standard()::isTarget))
        .toList();
  }
}
