package org.hedgerow.app;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import org.hedgerow.app.demo.DemoCentre;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.editions.BankFiller;
import org.hedgerow.store.editions.EditionReader;
import org.hedgerow.store.editions.LiveEditions;

/**
 * Adds the invented centre, all of it or nothing, and tells once how its people sign in. Of several
 * that do so at once one adds it.
 */
final class DemoTask {
  private static final Duration A_DAY = Duration.ofDays(1);
  private static final int FIRST_EDITION = 1;

  private final BankDatabase bank;
  private final LiveEditions editions;

  DemoTask(BankDatabase bank, LiveEditions editions) {
    this.bank = bank;
    this.editions = editions;
  }

  void run(PrintWriter out) {
    int newest =
        bank.atOnce(
            whole -> add(whole, out),
            () -> out.println("Another Hedgerow is adding an invented centre; waiting for it."));
    editions.catchUp(newest);
  }

  /** Sign-ins are told before they are kept, so that those which are kept were told. */
  private int add(BankDatabase whole, PrintWriter out) {
    Instant now = Instant.now();
    Lexicon first = editions.at(FIRST_EDITION).orElseThrow();
    EditionReader reader = new EditionReader(whole);
    AtomicReference<Lexicon> present = new AtomicReference<>(reader.newest(first));
    Supplier<Lexicon> newest = () -> Objects.requireNonNull(present.get());
    IntConsumer published = number -> present.set(reader.newest(first));
    List<DemoCentre.Login> logins =
        new DemoCentre(
                clock -> Wiring.accounts(whole, clock),
                clock -> Wiring.reviews(whole, newest, published, () -> 1, clock),
                first)
            .add(now);
    if (logins.isEmpty()) {
      out.println("People have accounts here already, so --demo adds nothing.");
    } else {
      new BankFiller(whole).firstPublishedBy(DemoCentre.founded(now).minus(A_DAY));
      print(logins, out);
    }
    return newest.get().edition();
  }

  private static void print(List<DemoCentre.Login> logins, PrintWriter out) {
    out.println(
        "An invented training centre was added. Its people sign in like this; it is told only once:");
    for (DemoCentre.Login login : logins) {
      out.println(
          "  %-9s %-42s %s, %s"
              .formatted(login.name(), login.password(), login.displayName(), login.role()));
    }
  }
}
