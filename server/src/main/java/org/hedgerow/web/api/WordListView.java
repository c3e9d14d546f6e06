package org.hedgerow.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.web.query.WordList;
import org.hedgerow.web.query.WordRequest;

/**
 * A list of words with the question it answers.
 *
 * @param next left out at the end of the list
 */
record WordListView(
    int edition,
    Map<String, Object> query,
    int total,
    List<WordView> words,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<String> next) {

  static WordListView of(WordRequest request, WordList list, Pictures pictures) {
    return new WordListView(
        request.edition(),
        QueryView.of(request),
        list.total(),
        words(request, list, pictures),
        list.next());
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
