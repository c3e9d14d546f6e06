package org.hedgerow.web.curriculum;

import java.util.List;
import java.util.Map;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.query.Parameters;

/** {@code GET /sight-words}: the named sets of words that children learn whole. */
final class SightWordsRead implements Read {

  private final Json json;

  SightWordsRead(Json json) {
    this.json = json;
  }

  /** All of them; first what counts where nothing is chosen. */
  record View(int edition, List<Named> sightWords) {}

  record Named(String name, String title, String note, List<String> words) {

    static Named of(SightWords set) {
      return new Named(set.name(), set.title(), set.note(), set.words());
    }
  }

  @Override
  public List<String> parameters() {
    return List.of();
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    return Question.json("sight-words", json, () -> new View(lexicon.edition(), all(lexicon)));
  }

  static List<Named> all(Lexicon lexicon) {
    return lexicon.plans().sightWords().all().stream().map(Named::of).toList();
  }
}
