package org.hedgerow.accounts;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.Role;

/** Who is signed in where. */
public final class Sessions {
  private static final int MAX_CLIENT = 200;

  /**
   * @param session the session found by a secret
   */
  public record Found(Account account, Session session) {}

  private final AccountRepository book;
  private final Secrets secrets;
  private final InstantSource clock;

  Sessions(AccountRepository book, Secrets secrets, InstantSource clock) {
    this.book = book;
    this.secrets = secrets;
    this.clock = clock;
  }

  Secret start(AccountUnitOfWork unit, Account account, String client) {
    Instant now = clock.instant();
    unit.sessions().removeStartedBefore(now.minus(Session.MAX_LENGTH));
    Secret secret = secrets.fresh();
    String shown = client.length() > MAX_CLIENT ? client.substring(0, MAX_CLIENT) : client;
    unit.sessions().add(secret.hash(), account.id(), shown, now);
    return secret;
  }

  /** Whose session it is; nobody's if it is over or the account isn't active. */
  public Optional<Found> find(Secret secret) {
    return book.step(unit -> find(unit.sessions(), secret.hash()));
  }

  private Optional<Found> find(SessionStore sessions, String hash) {
    Instant now = clock.instant();
    Optional<SessionStore.Held> held =
        sessions.held(hash).filter(found -> !found.session().isOver(now));
    held.map(SessionStore.Held::session)
        .filter(session -> session.wasSeenAWhileAgo(now))
        .ifPresent(session -> sessions.changeSeen(session.id(), now));
    return held.filter(found -> found.owner().active())
        .map(found -> new Found(found.owner(), found.session()));
  }

  /** Those of an account that aren't over, the last used first. */
  public List<Session> of(Actor actor, int accountId) {
    requireOwnerOrAdministrator(actor, accountId);
    Instant now = clock.instant();
    return book.step(
        unit ->
            unit.sessions().of(accountId).stream()
                .filter(session -> !session.isOver(now))
                .toList());
  }

  /**
   * @throws NotFoundException if the account has no such session
   */
  public void end(Actor actor, int accountId, int sessionId) {
    requireOwnerOrAdministrator(actor, accountId);
    book.inTransaction(
        unit -> {
          if (!unit.sessions().remove(accountId, sessionId)) {
            throw new NotFoundException("The session");
          }
          record(unit, actor, accountId, 1);
          return sessionId;
        });
  }

  /**
   * Ends all of an account but one.
   *
   * @return how many
   */
  public int endAll(Actor actor, int accountId, Optional<Integer> but) {
    requireOwnerOrAdministrator(actor, accountId);
    return book.inTransaction(
        unit -> {
          int ended = unit.sessions().removeAll(accountId, but);
          record(unit, actor, accountId, ended);
          return ended;
        });
  }

  private void record(AccountUnitOfWork unit, Actor actor, int accountId, int ended) {
    Audit.of(unit, clock)
        .add(actor, "session.ended", "account " + accountId, Map.of("sessions", ended));
  }

  static void requireOwnerOrAdministrator(Actor actor, int accountId) {
    if (!actor.is(accountId)) {
      actor.require(Role.ADMINISTRATOR);
    }
  }
}
