package org.hedgerow.web.people;

import java.time.Instant;
import java.util.List;
import org.hedgerow.accounts.Session;

/**
 * Somebody is signed in somewhere.
 *
 * @param client what the browser says of itself
 * @param started when they signed in
 * @param seen when it was last used, to about a minute
 */
record SessionView(int id, String client, Instant started, Instant seen) {

  /** All of an account. */
  record All(List<SessionView> sessions) {
    static All of(List<Session> sessions) {
      return new All(sessions.stream().map(SessionView::of).toList());
    }
  }

  private static SessionView of(Session session) {
    return new SessionView(session.id(), session.client(), session.startedAt(), session.seenAt());
  }
}
