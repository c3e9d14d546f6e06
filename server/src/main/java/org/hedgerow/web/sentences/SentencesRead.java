package org.hedgerow.web.sentences;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.NextReference;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.query.Parameters;

/** {@code GET /sentences}: the sentences of the bank. */
final class SentencesRead implements Read {

  private static final String PATH = "/api/v1/sentences";

  private final Json json;

  SentencesRead(Json json) {
    this.json = json;
  }

  @Override
  public List<String> parameters() {
    return SentenceRequest.PARAMETERS;
  }

  @Override
  public List<Format> formats() {
    return List.of(Format.JSON, Format.NDJSON, Format.TEXT);
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    SentenceRequest request = SentenceRequest.read(lexicon, parameters);
    return new Question(
        "sentences?" + request.resolved(), format -> answer(lexicon, request, format));
  }

  private Question.Body answer(Lexicon lexicon, SentenceRequest request, Format format) {
    SentenceRequest.Found found = request.find(lexicon.sentences());
    byte[] bytes =
        switch (format) {
          case JSON -> json.bytes(SentenceListView.of(request, found));
          case NDJSON ->
              json.lines(found.sentences().stream().map(SentenceListView.Entry::of).toList());
          case TEXT ->
              found.sentences().stream()
                  .map(each -> each.text() + "\n")
                  .collect(joining())
                  .getBytes(UTF_8);
          default -> throw format.notOffered();
        };
    return new Question.Body(
        bytes,
        OptionalInt.of(found.total()),
        NextReference.of(PATH, request.resolved(), found.next(), format));
  }
}
