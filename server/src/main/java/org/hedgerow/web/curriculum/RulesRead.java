package org.hedgerow.web.curriculum;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Switch;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.query.Parameters;

/** {@code GET /rules}: the named reading rules, and what each switch in them means. */
final class RulesRead implements Read {

  private final Json json;

  RulesRead(Json json) {
    this.json = json;
  }

  /** All of them, the usual ones first. */
  record View(int edition, List<Named> rules) {}

  /**
   * @param label every switch as it is written in queries
   */
  record Named(String name, String title, String note, String label, List<Choice> switches) {

    static Named of(RuleSet set) {
      return new Named(
          set.name(),
          set.title(),
          set.note(),
          set.rules().label(),
          Arrays.stream(Switch.values())
              .map(each -> new Choice(each.label(), set.rules().allow(each), each.meaning()))
              .toList());
    }
  }

  record Choice(String name, boolean on, String meaning) {}

  @Override
  public List<String> parameters() {
    return List.of();
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    return Question.json("rules", json, () -> new View(lexicon.edition(), all(lexicon)));
  }

  static List<Named> all(Lexicon lexicon) {
    return lexicon.plans().rules().all().stream().map(Named::of).toList();
  }
}
