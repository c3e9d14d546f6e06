package org.hedgerow.accounts;

import com.password4j.Argon2Function;
import java.text.Normalizer;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.hedgerow.operations.UnavailableException;

/**
 * Argon2id (RFC 9106) with the figures of OWASP's Password Storage Cheat Sheet: 19 MiB of memory,
 * two passes, one lane. The text of a hash carries its figures, so others can follow later.
 */
public final class Argon2 implements PasswordHash {
  private static final int MEMORY_IN_KIBIBYTES = 19 * 1024;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int BYTES = 32;

  /** Maximum concurrent Argon2 computations, to bound memory. */
  private static final int AT_A_TIME = 4;

  private static final int WAIT_SECONDS = 5;

  /** Whoever waits holds a thread, so about this many may. */
  private static final int MAX_WAITING = 8;

  private final Argon2Function function =
      Argon2Function.getInstance(
          MEMORY_IN_KIBIBYTES, PASSES, LANES, BYTES, com.password4j.types.Argon2.ID);
  private final Secrets salts = new Secrets();
  private final Semaphore turns = new Semaphore(AT_A_TIME, true);

  @Override
  public String of(String password) {
    return inTurn(() -> function.hash(normal(password), salts.fresh().text()).getResult());
  }

  @Override
  public boolean fits(String password, String hash) {
    return inTurn(() -> Argon2Function.getInstanceFromHash(hash).check(normal(password), hash));
  }

  /** Keyboards differ in how they compose letters with marks (NIST SP 800-63B, 5.1.1.2). */
  private static String normal(String password) {
    return Normalizer.normalize(password, Normalizer.Form.NFKC);
  }

  private <T> T inTurn(Supplier<T> work) {
    if (!hasTurn()) {
      throw new UnavailableException("Too many people sign in at this moment.");
    }
    try {
      return work.get();
    } finally {
      turns.release();
    }
  }

  private boolean hasTurn() {
    try {
      return turns.getQueueLength() < MAX_WAITING
          && turns.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
