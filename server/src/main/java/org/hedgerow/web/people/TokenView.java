package org.hedgerow.web.people;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.ApiToken;
import org.hedgerow.accounts.ApiTokens;

/**
 * A token of an account.
 *
 * @param token the token itself, only where it was just made
 */
record TokenView(
    int id,
    String label,
    String role,
    Instant made,
    Instant expires,
    Optional<Instant> used,
    Optional<String> token) {

  /** All of an account. */
  record All(List<TokenView> tokens) {
    static All of(List<ApiToken> tokens) {
      return new All(tokens.stream().map(token -> TokenView.of(token, Optional.empty())).toList());
    }
  }

  static TokenView of(ApiTokens.Made made) {
    return of(made.token(), Optional.of(made.secret().text()));
  }

  private static TokenView of(ApiToken token, Optional<String> secret) {
    return new TokenView(
        token.id(),
        token.label(),
        token.role().label(),
        token.madeAt(),
        token.expiresAt(),
        token.usedAt(),
        secret);
  }
}
