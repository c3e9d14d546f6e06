package org.hedgerow.web.sentences;

import org.hedgerow.web.http.Endpoints;

/** What programs may ask about sentences. */
public final class SentenceEndpoints {
  private SentenceEndpoints() {}

  public static void enter(Endpoints endpoints, SentenceOrders orders) {
    endpoints.read("/sentences", new SentencesRead(endpoints.json()));
    endpoints.question("/sentence-checks", SentenceChecksBody.class, SentenceChecks::answer);
    endpoints.limitedQuestion(
        "/sentence-drafts", SentenceDraftsBody.class, new SentenceDrafts(orders)::answer);
  }
}
