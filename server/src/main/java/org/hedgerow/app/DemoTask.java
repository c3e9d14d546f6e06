package org.hedgerow.app;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.hedgerow.app.demo.DemoCentre;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.BankFiller;
import org.hedgerow.store.LiveEditions;

/** Adds the invented centre, and tells once how its people sign in. */
final class DemoTask {
  private static final Duration A_DAY = Duration.ofDays(1);

  private final BankDatabase bank;
  private final LiveEditions editions;

  DemoTask(BankDatabase bank, LiveEditions editions) {
    this.bank = bank;
    this.editions = editions;
  }

  void run(PrintWriter out) {
    Instant now = Instant.now();
    List<DemoCentre.Login> logins =
        new DemoCentre(
                clock -> Wiring.accounts(bank, clock),
                clock -> Wiring.reviews(bank, editions, () -> 1, clock),
                editions.newest())
            .add(now);
    if (logins.isEmpty()) {
      out.println("People have accounts here already, so --demo adds nothing.");
      return;
    }
    new BankFiller(bank).firstPublishedBy(DemoCentre.founded(now).minus(A_DAY));
    out.println(
        "An invented training centre was added. Its people sign in like this; it is told only once:");
    for (DemoCentre.Login login : logins) {
      out.println(
          "  %-9s %-42s %s, %s"
              .formatted(login.name(), login.password(), login.displayName(), login.role()));
    }
  }
}
