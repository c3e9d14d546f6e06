package org.hedgerow.caching;

import com.github.benmanes.caffeine.cache.Caffeine;

/** Where every cache of the program begins. */
public final class Caches {
  private Caches() {}

  /**
   * A builder of caches that are tidied by the threads that use them. Caffeine's default is the
   * common pool, whose few threads may all be waiting for something else.
   */
  public static Caffeine<Object, Object> builder() {
    return Caffeine.newBuilder().executor(Runnable::run);
  }
}
