package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;

/** Tokens by which programs act for people. */
public final class ApiTokens {
  /** The longest that a token may be good for. */
  public static final int MAX_DAYS = 366;

  private static final int MAX = 50;

  /**
   * @param actor may at most what the token and the account may
   */
  public record Found(Actor actor, ApiToken token) {}

  private final AccountRepository book;
  private final Secrets secrets;
  private final InstantSource clock;

  ApiTokens(AccountRepository book, Secrets secrets, InstantSource clock) {
    this.book = book;
    this.secrets = secrets;
    this.clock = clock;
  }

  /**
   * Makes a token for the actor's own account.
   *
   * @param typedLabel what it is for
   * @return what is shown once
   * @throws RejectedException if it can't be as it is asked
   */
  public Secret make(Actor actor, String typedLabel, Role role, int days) {
    return make(actor, typedLabel, role, days, Optional.empty()).secret();
  }

  /**
   * What was made.
   *
   * @param secret what is shown once
   */
  public record Made(ApiToken token, Secret secret) {}

  /**
   * The same for a program that acts by a token itself: one that was lost mustn't live on in
   * others.
   *
   * @param end of the token it acts by; none for a person
   */
  public Made make(Actor actor, String typedLabel, Role role, int days, Optional<Instant> end) {
    Account owner = actor.requireAccount();
    actor.require(role);
    String label = NameRules.normalDisplayName(typedLabel);
    requireSound(label, role, days);
    end.ifPresent(latest -> requireNoLater(latest, days));
    Secret secret = secrets.fresh();
    return book.inTransaction(
        unit -> {
          add(unit, actor, owner, label, role, days, secret);
          ApiToken token = unit.tokens().find(secret.hash()).orElseThrow();
          return new Made(token, secret);
        });
  }

  private void requireNoLater(Instant latest, int days) {
    if (clock.instant().plus(Duration.ofDays(days)).isAfter(latest)) {
      throw RejectedException.at(
          "days",
          "A program's token makes none that is good for longer than itself. Make it on the page of your account.");
    }
  }

  private static void requireSound(String label, Role role, int days) {
    if (NameRules.displayNameFault(label).isPresent()) {
      throw RejectedException.at("label", "Say in 1 to 80 characters what the token is for.");
    }
    if (role == Role.VISITOR) {
      throw RejectedException.at("role", "A visitor needs no token.");
    }
    if (days < 1 || days > MAX_DAYS) {
      throw RejectedException.at("days", "A token is good for 1 to 366 days.");
    }
  }

  private int add(
      AccountUnitOfWork unit,
      Actor actor,
      Account owner,
      String label,
      Role role,
      int days,
      Secret secret) {
    if (unit.tokens().of(owner.id()).size() >= MAX) {
      throw RejectedException.at("label", "You have 50 tokens. Revoke one that you don't need.");
    }
    Instant now = clock.instant();
    Instant end = now.plus(Duration.ofDays(days));
    int id = unit.tokens().add(secret.hash(), owner.id(), label, role, now, end);
    Audit.of(unit, clock)
        .add(
            actor,
            "token.made",
            "token " + id,
            Map.of("label", label, "role", role.label(), "expires", end.toString()));
    return id;
  }

  /** Who acts by this token; nobody if it has expired or the account isn't active. */
  public Optional<Found> find(Secret secret) {
    return book.step(unit -> find(unit.tokens(), secret.hash()));
  }

  private Optional<Found> find(TokenStore tokens, String hash) {
    Instant now = clock.instant();
    Optional<TokenStore.Held> held = tokens.held(hash).filter(found -> !found.token().isOver(now));
    held.map(TokenStore.Held::token)
        .filter(token -> token.wasUsedAWhileAgo(now))
        .ifPresent(token -> tokens.changeUsed(token.id(), now));
    return held.filter(found -> found.owner().active())
        .map(found -> new Found(Actor.of(found.owner(), found.token().role()), found.token()));
  }

  /** Those of an account, oldest first, expired ones too. */
  public List<ApiToken> of(Actor actor, int accountId) {
    Sessions.requireOwnerOrAdministrator(actor, accountId);
    return book.step(unit -> unit.tokens().of(accountId));
  }

  /**
   * @throws NotFoundException if the account has no such token
   */
  public void revoke(Actor actor, int accountId, int tokenId) {
    Sessions.requireOwnerOrAdministrator(actor, accountId);
    book.inTransaction(
        unit -> {
          if (!unit.tokens().remove(accountId, tokenId)) {
            throw new NotFoundException("The token");
          }
          Audit.of(unit, clock).add(actor, "token.revoked", "token " + tokenId, Map.of());
          return tokenId;
        });
  }
}
