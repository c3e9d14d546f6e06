package org.hedgerow.web.security;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.accounts.Secret;

/** The token that a program sends (RFC 6750, section 2.1). */
final class Bearer {
  private static final String SCHEME = "bearer ";

  private Bearer() {}

  /** Other schemes are for servers before this one. */
  static Optional<Secret> of(Context context) {
    return Optional.ofNullable(context.header(Header.AUTHORIZATION))
        .filter(header -> header.toLowerCase(Locale.ROOT).startsWith(SCHEME))
        .map(header -> new Secret(header.substring(SCHEME.length()).strip()));
  }
}
