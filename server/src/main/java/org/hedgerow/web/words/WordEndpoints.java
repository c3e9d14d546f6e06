package org.hedgerow.web.words;

import org.hedgerow.web.http.Endpoints;

/** What programs may ask about words. */
public final class WordEndpoints {
  private WordEndpoints() {}

  public static void enter(Endpoints endpoints) {
    endpoints.read("/words", new WordsRead(endpoints.json()));
    endpoints.read("/words/{spelling}", new WordRead(endpoints.json(), endpoints.editions().log()));
    endpoints.question("/word-checks", WordChecksBody.class, WordChecks::answer);
    endpoints.question("/alignments", AlignmentBody.class, Alignments::answer);
  }
}
