package org.hedgerow.web.words;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.NextReference;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.query.Parameters;

/** {@code GET /words}: a list of words, in every format. */
final class WordsRead implements Read {

  static final String PATH = "/api/v1/words";

  private final Json json;
  private final WordJsonCache written;

  WordsRead(Json json) {
    this.json = json;
    this.written = new WordJsonCache(json);
  }

  @Override
  public List<String> parameters() {
    return WordParameters.NAMES;
  }

  @Override
  public List<Format> formats() {
    return List.of(Format.JSON, Format.CSV, Format.NDJSON, Format.TEXT, Format.XLSX);
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    WordRequest request = WordRequest.read(lexicon, parameters);
    String key = "words?" + request.resolved() + "&after=" + request.after().orElse("");
    return new Question(key, format -> answer(key, lexicon, request, format));
  }

  private Question.Body answer(String key, Lexicon lexicon, WordRequest request, Format format) {
    WordList list = WordList.find(lexicon, request);
    Supplier<List<WordView>> views = () -> WordListView.words(request, list, lexicon.pictures());
    byte[] bytes =
        switch (format) {
          case JSON ->
              json.bytes(WordListView.of(request, list, written.json(key, list.words(), views)));
          case NDJSON -> json.lines(views.get());
          case CSV -> new WordTable(request, list).csv();
          case XLSX -> new WordTable(request, list).spreadsheet();
          case TEXT -> text(list).getBytes(StandardCharsets.UTF_8);
        };
    return new Question.Body(
        bytes,
        OptionalInt.of(list.total()),
        NextReference.of(PATH, request.resolved(), list.next(), format));
  }

  /** One spelling on a line. */
  private static String text(WordList list) {
    StringBuilder lines = new StringBuilder();
    list.words().forEach(word -> lines.append(word.spelling()).append('\n'));
    return lines.toString();
  }
}
