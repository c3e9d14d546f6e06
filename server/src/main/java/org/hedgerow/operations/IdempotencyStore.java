package org.hedgerow.operations;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Keeps the answers of requests that carry a key, so that a request sent again is answered again
 * and does nothing more. Safe for use by several threads and servers.
 */
public interface IdempotencyStore {
  /**
   * A request.
   *
   * @param keyHash of its key; SHA-256 in hexadecimal
   * @param requestHash of all that it asks for; SHA-256 in hexadecimal
   */
  record Request(int accountId, String keyHash, String requestHash) {}

  /**
   * An answer as it is kept.
   *
   * @param status from 200 to 299
   * @param location the header {@code Location}, if it has one
   * @param entityTag the header {@code ETag}, if it has one
   * @param mediaType the header {@code Content-Type}
   * @param body sealed, so that only whoever has the key can read it
   */
  record Kept(
      int status,
      Optional<String> location,
      Optional<String> entityTag,
      String mediaType,
      String body) {}

  /** What came of a request. */
  sealed interface Outcome {
    /** It was done now. */
    record Done() implements Outcome {}

    /** It had been done before, with this answer. */
    record Repeated(Kept answer) implements Outcome {}

    /** It is being done at this moment, here or by another server. */
    record Running() implements Outcome {}

    /** The key belongs to a request that asks for something else. */
    record Reused() implements Outcome {}
  }

  /**
   * Does what a request asks for, unless that was done in the last 24 hours. All that the work
   * changes and its answer are kept in one transaction, or nothing if it throws.
   *
   * @throws UnavailableException if the records can't be reached
   */
  Outcome once(Request request, Supplier<Kept> work);
}
