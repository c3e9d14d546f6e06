package org.hedgerow.web.security;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Finds out who a request comes from at most once; most requests needn't know. */
final class LazyIdentity {
  static final String ATTRIBUTE = "hedgerow.identity";

  private final Supplier<Identity> source;
  private @Nullable Identity found;

  LazyIdentity(Supplier<Identity> source) {
    this.source = source;
  }

  Identity identity() {
    Identity known = found == null ? source.get() : found;
    found = known;
    return known;
  }
}
