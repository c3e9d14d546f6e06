package org.hedgerow.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.UnavailableException;
import org.junit.jupiter.api.Test;

/** A centre's choices kept in memory. */
class CentreTest extends CentreContract {
  @Override
  protected AccountRepository book() {
    return new MemoryAccountRepository();
  }

  @Test
  void keepsToWhatItKnewWhileTheRecordsCannotBeReached() {
    MemoryAccountRepository book = new MemoryAccountRepository();
    AtomicBoolean broken = new AtomicBoolean();
    AccountRepository fragile =
        new AccountRepository() {
          @Override
          public <R> R inTransaction(Function<AccountUnitOfWork, R> work) {
            if (broken.get()) {
              throw new UnavailableException("The database doesn't answer.");
            }
            return book.inTransaction(work);
          }
        };
    CentreSettings settings = new CentreSettings(fragile, InstantSource.system());
    settings.change(
        Actor.OPERATOR, new CentreEdit(Optional.of("Hawthorn"), Optional.empty()), x -> true);
    try (CachedCentre known = new CachedCentre(settings)) {
      known.look();
      broken.set(true);
      known.look();
      assertThat(known.name()).isEqualTo("Hawthorn");
    }
  }
}
