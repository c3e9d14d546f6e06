package org.hedgerow.faults;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Optional;
import org.hedgerow.faults.FaultClient.Call;

/** Waits until a server reaches its database again. */
final class Recovery {
  private static final long BETWEEN = 250;

  /** What is answered from the database alone. */
  private static final Call NEEDS_DATABASE = Call.get("/api/v1/account", "not-a-token");

  private final FaultClient client = new FaultClient(new Tally());
  private final String server;

  Recovery(String server) {
    this.server = server;
  }

  /** Whether it did in time. */
  boolean await(Duration longest) {
    long end = System.nanoTime() + longest.toNanos();
    while (System.nanoTime() < end) {
      Writing.pause(BETWEEN);
      if (reaches()) {
        return true;
      }
    }
    return false;
  }

  /** A token that nobody has is refused by whoever can look for it. */
  private boolean reaches() {
    Optional<HttpResponse<String>> answer = client.ask(server, NEEDS_DATABASE);
    return answer.isPresent() && answer.get().statusCode() == 401;
  }
}
