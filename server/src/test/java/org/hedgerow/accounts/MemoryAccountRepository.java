package org.hedgerow.accounts;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.AuditEntry;
import org.hedgerow.operations.AuditLog;
import org.hedgerow.operations.Role;

/** Keeps accounts in memory, one transaction after another. */
public final class MemoryAccountRepository implements AccountRepository {

  /** Rows by id, each under the hash of its secret. */
  private static final class Rows<T> {
    private final Map<Integer, T> rows = new LinkedHashMap<>();
    private final Map<Integer, String> hashes = new LinkedHashMap<>();

    int add(String hash, Function<Integer, T> row) {
      int id = hashes.size() + 1;
      hashes.put(id, hash);
      rows.put(id, row.apply(id));
      return id;
    }

    Optional<T> find(String hash) {
      return hashes.entrySet().stream()
          .filter(each -> each.getValue().equals(hash))
          .findFirst()
          .flatMap(each -> find(each.getKey()));
    }

    Optional<T> find(int id) {
      return Optional.ofNullable(rows.get(id));
    }

    List<T> where(Predicate<T> condition) {
      return rows.values().stream().filter(condition).toList();
    }

    void change(int id, UnaryOperator<T> change) {
      rows.computeIfPresent(id, (key, row) -> change.apply(row));
    }

    int removeIf(Predicate<T> condition) {
      int before = rows.size();
      rows.values().removeIf(condition);
      return before - rows.size();
    }

    void become(Rows<T> other) {
      rows.clear();
      rows.putAll(other.rows);
      hashes.clear();
      hashes.putAll(other.hashes);
    }

    Rows<T> copy() {
      Rows<T> copy = new Rows<>();
      copy.become(this);
      return copy;
    }
  }

  private final Rows<Account> accounts = new Rows<>();
  private final Rows<Link> links = new Rows<>();
  private final Rows<Session> sessions = new Rows<>();
  private final Rows<ApiToken> tokens = new Rows<>();
  private final Map<String, FailedSignIns> failures = new LinkedHashMap<>();
  private final Map<Device, Instant> devices = new LinkedHashMap<>();
  private final List<AuditEntry> audit = new ArrayList<>();
  private Centre centre = Centre.UNNAMED;

  @Override
  public synchronized <R> R inTransaction(Function<AccountUnitOfWork, R> work) {
    Rows<Account> oldAccounts = accounts.copy();
    Rows<Link> oldLinks = links.copy();
    Rows<Session> oldSessions = sessions.copy();
    Rows<ApiToken> oldTokens = tokens.copy();
    int oldAudit = audit.size();
    Centre oldCentre = centre;
    try {
      return work.apply(new Page());
    } catch (RuntimeException failure) {
      accounts.become(oldAccounts);
      links.become(oldLinks);
      sessions.become(oldSessions);
      tokens.become(oldTokens);
      centre = oldCentre;
      audit.subList(oldAudit, audit.size()).clear();
      throw failure;
    }
  }

  private Account account(int id) {
    return accounts.find(id).orElseThrow();
  }

  private final class Page implements AccountUnitOfWork {
    @Override
    public AccountStore accounts() {
      return new Accounts();
    }

    @Override
    public LinkStore links() {
      return new Links();
    }

    @Override
    public SessionStore sessions() {
      return new Sessions();
    }

    @Override
    public TokenStore tokens() {
      return new Tokens();
    }

    @Override
    public FailedSignInStore failures() {
      return new AllFailures();
    }

    @Override
    public DeviceStore devices() {
      return new Devices();
    }

    @Override
    public AuditLog audit() {
      return audit::add;
    }

    @Override
    public AuditTrail trail() {
      return new MemoryTrail(List.copyOf(audit));
    }

    @Override
    public CentreStore centre() {
      return new OneCentre();
    }
  }

  private record Device(String secretHash, int accountId) {}

  private final class Devices implements DeviceStore {
    @Override
    public boolean isKnown(String secretHash, int accountId, Instant since) {
      Instant seen = devices.get(new Device(secretHash, accountId));
      return seen != null && !seen.isBefore(since);
    }

    @Override
    public void changeSecret(String secretHash, String freshHash) {
      for (Device each : List.copyOf(devices.keySet())) {
        if (each.secretHash().equals(secretHash)) {
          devices.put(new Device(freshHash, each.accountId()), devices.remove(each));
        }
      }
    }

    @Override
    public void remember(String secretHash, int accountId, Instant at, int max) {
      devices.put(new Device(secretHash, accountId), at);
      devices.keySet().stream()
          .filter(each -> each.accountId() == accountId)
          .sorted(Comparator.comparing(devices::get, Comparator.reverseOrder()))
          .skip(max)
          .toList()
          .forEach(devices::remove);
    }
  }

  private final class OneCentre implements CentreStore {
    @Override
    public Centre read() {
      return centre;
    }

    @Override
    public Centre lock() {
      return centre;
    }

    @Override
    public void save(Centre changed) {
      centre = changed;
    }
  }

  private final class Accounts implements AccountStore {
    @Override
    public Optional<Account> find(int id) {
      return accounts.find(id);
    }

    @Override
    public Optional<Account> find(String name) {
      return accounts.where(account -> account.name().equals(name)).stream().findFirst();
    }

    @Override
    public List<Account> all() {
      return accounts.where(account -> true).stream()
          .sorted(Comparator.comparing(Account::name))
          .toList();
    }

    @Override
    public Optional<Account> add(
        String name, String displayName, Role role, String passwordHash, Instant since) {
      if (find(name).isPresent()) {
        return Optional.empty();
      }
      int id =
          accounts.add(
              passwordHash, fresh -> new Account(fresh, name, displayName, role, true, since));
      return find(id);
    }

    @Override
    public String passwordHash(int id) {
      return Objects.requireNonNull(accounts.hashes.get(id));
    }

    @Override
    public void changeDisplayName(int id, String displayName) {
      accounts.change(
          id, a -> new Account(id, a.name(), displayName, a.role(), a.active(), a.since()));
    }

    @Override
    public void changePasswordHash(int id, String passwordHash) {
      accounts.hashes.put(id, passwordHash);
    }

    @Override
    public void changeRole(int id, Role role) {
      accounts.change(
          id, a -> new Account(id, a.name(), a.displayName(), role, a.active(), a.since()));
    }

    @Override
    public void changeActive(int id, boolean active) {
      accounts.change(
          id, a -> new Account(id, a.name(), a.displayName(), a.role(), active, a.since()));
    }

    @Override
    public int lockAdministrators() {
      return accounts.where(a -> a.active() && a.role() == Role.ADMINISTRATOR).size();
    }
  }

  private final class Links implements LinkStore {
    @Override
    public int add(
        String secretHash,
        LinkPurpose purpose,
        Role role,
        Optional<Integer> accountId,
        String madeBy,
        Instant madeAt,
        Instant expiresAt) {
      return links.add(
          secretHash,
          id ->
              new Link(id, purpose, role, accountId, madeBy, madeAt, expiresAt, Optional.empty()));
    }

    @Override
    public Optional<Link> find(String secretHash) {
      return links.find(secretHash);
    }

    @Override
    public Optional<Link> find(int id) {
      return links.find(id);
    }

    @Override
    public List<Link> open(Instant now) {
      return links.where(link -> link.isOpen(now));
    }

    @Override
    public void spend(int id, Instant now) {
      links.change(
          id,
          link ->
              new Link(
                  id,
                  link.purpose(),
                  link.role(),
                  link.accountId(),
                  link.madeBy(),
                  link.madeAt(),
                  link.expiresAt(),
                  Optional.of(now)));
    }
  }

  private final class Sessions implements SessionStore {
    @Override
    public int add(String secretHash, int accountId, String client, Instant startedAt) {
      return sessions.add(
          secretHash, id -> new Session(id, accountId, client, startedAt, startedAt));
    }

    @Override
    public Optional<SessionStore.Held> held(String secretHash) {
      return sessions
          .find(secretHash)
          .map(session -> new SessionStore.Held(session, account(session.accountId())));
    }

    @Override
    public List<Session> of(int accountId) {
      return sessions.where(session -> session.accountId() == accountId).stream()
          .sorted(Comparator.comparing(Session::seenAt).thenComparing(Session::id).reversed())
          .toList();
    }

    @Override
    public void changeSeen(int id, Instant seenAt) {
      sessions.change(
          id, old -> new Session(id, old.accountId(), old.client(), old.startedAt(), seenAt));
    }

    @Override
    public boolean remove(int accountId, int id) {
      return sessions.removeIf(each -> each.accountId() == accountId && each.id() == id) > 0;
    }

    @Override
    public int removeAll(int accountId, Optional<Integer> but) {
      return sessions.removeIf(
          each -> each.accountId() == accountId && !but.equals(Optional.of(each.id())));
    }

    @Override
    public int removeStartedBefore(Instant moment) {
      return sessions.removeIf(each -> each.startedAt().isBefore(moment));
    }
  }

  private final class Tokens implements TokenStore {
    @Override
    public int add(
        String secretHash,
        int accountId,
        String label,
        Role role,
        Instant madeAt,
        Instant expiresAt) {
      return tokens.add(
          secretHash,
          id -> new ApiToken(id, accountId, label, role, madeAt, expiresAt, Optional.empty()));
    }

    @Override
    public Optional<ApiToken> find(String secretHash) {
      return tokens.find(secretHash);
    }

    @Override
    public Optional<TokenStore.Held> held(String secretHash) {
      return find(secretHash).map(token -> new TokenStore.Held(token, account(token.accountId())));
    }

    @Override
    public List<ApiToken> of(int accountId) {
      return tokens.where(token -> token.accountId() == accountId);
    }

    @Override
    public void changeUsed(int id, Instant usedAt) {
      tokens.change(
          id,
          old ->
              new ApiToken(
                  id,
                  old.accountId(),
                  old.label(),
                  old.role(),
                  old.madeAt(),
                  old.expiresAt(),
                  Optional.of(usedAt)));
    }

    @Override
    public boolean remove(int accountId, int id) {
      return tokens.removeIf(each -> each.accountId() == accountId && each.id() == id) > 0;
    }
  }

  private final class AllFailures implements FailedSignInStore {
    @Override
    public FailedSignIns lock(String subject, Instant now) {
      return failures.getOrDefault(subject, new FailedSignIns(subject, 0, now));
    }

    @Override
    public void save(FailedSignIns changed) {
      failures.put(changed.subject(), changed);
    }

    @Override
    public void remove(String subject) {
      failures.remove(subject);
    }

    @Override
    public void removeStartingWith(String prefix) {
      failures.keySet().removeIf(each -> each.startsWith(prefix));
    }

    @Override
    public int keepNewest(int max) {
      List<FailedSignIns> old =
          failures.values().stream()
              .sorted(Comparator.comparing(FailedSignIns::last).reversed())
              .skip(max)
              .toList();
      old.forEach(each -> failures.remove(each.subject()));
      return old.size();
    }

    @Override
    public int removeBefore(Instant moment) {
      int before = failures.size();
      failures.values().removeIf(each -> each.last().isBefore(moment));
      return before - failures.size();
    }
  }
}
