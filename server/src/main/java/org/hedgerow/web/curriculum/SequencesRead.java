package org.hedgerow.web.curriculum;

import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.http.AccentParameter;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.query.Parameters;

/** {@code GET /sequences}: the orders in which phonograms are taught, step by step. */
final class SequencesRead implements Read {

  private final Json json;

  SequencesRead(Json json) {
    this.json = json;
  }

  @Override
  public List<String> parameters() {
    return AccentParameter.NAMES;
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    String accent = AccentParameter.one(lexicon, parameters).tag();
    return Question.json("sequences?" + accent, json, () -> SequencesView.of(lexicon, accent));
  }
}
