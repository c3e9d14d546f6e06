package org.hedgerow.web.curriculum;

import org.hedgerow.web.http.Endpoints;
import org.hedgerow.web.http.Json;

/** What programs may ask about reading rules, sequences and sight words. */
public final class CurriculumEndpoints {
  private CurriculumEndpoints() {}

  public static void enter(Endpoints endpoints) {
    Json json = endpoints.json();
    endpoints.read("/rules/{name}", NamedRead.rules(json));
    endpoints.read("/rules", new RulesRead(json));
    endpoints.read("/sequences/{name}", NamedRead.sequences(json));
    endpoints.rehearsedRead("/sequences", new SequencesRead(json));
    endpoints.read("/sight-words/{name}", NamedRead.sightWords(json));
    endpoints.read("/sight-words", new SightWordsRead(json));
  }
}
