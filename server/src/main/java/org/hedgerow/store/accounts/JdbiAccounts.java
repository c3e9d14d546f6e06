package org.hedgerow.store.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.hedgerow.accounts.AccountStore;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Role;
import org.hedgerow.store.database.Columns;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.StatementContext;

/** Accounts in their table. */
record JdbiAccounts(Handle handle) implements AccountStore {
  /** By names that no other table has, so that accounts can be read from joins too. */
  private static final String COLUMNS =
      "accounts.id as account_id, accounts.name as account_name, accounts.display_name,"
          + " accounts.role as account_role, accounts.active, accounts.since";

  @Override
  public Optional<Account> find(int id) {
    return handle
        .createQuery("select " + COLUMNS + " from accounts where id = :id")
        .bind("id", id)
        .map(JdbiAccounts::read)
        .findOne();
  }

  @Override
  public Optional<Account> find(String name) {
    return handle
        .createQuery("select " + COLUMNS + " from accounts where name = :name")
        .bind("name", name)
        .map(JdbiAccounts::read)
        .findOne();
  }

  @Override
  public List<Account> all() {
    return handle
        .createQuery("select " + COLUMNS + " from accounts order by name")
        .map(JdbiAccounts::read)
        .list();
  }

  @Override
  public Optional<Account> add(
      String name, String displayName, Role role, String passwordHash, Instant since) {
    return handle
        .createQuery(
            "insert into accounts (name, display_name, role, password_hash, since)"
                + " values (:name, :displayName, :role, :passwordHash, :since)"
                + " on conflict (name) do nothing returning "
                + COLUMNS)
        .bind("name", name)
        .bind("displayName", displayName)
        .bind("role", role.label())
        .bind("passwordHash", passwordHash)
        .bind("since", since)
        .map(JdbiAccounts::read)
        .findOne();
  }

  @Override
  public String passwordHash(int id) {
    return handle
        .createQuery("select password_hash from accounts where id = :id")
        .bind("id", id)
        .mapTo(String.class)
        .one();
  }

  @Override
  public void changeDisplayName(int id, String displayName) {
    handle.execute("update accounts set display_name = ? where id = ?", displayName, id);
  }

  @Override
  public void changePasswordHash(int id, String passwordHash) {
    handle.execute("update accounts set password_hash = ? where id = ?", passwordHash, id);
  }

  @Override
  public void changeRole(int id, Role role) {
    handle.execute("update accounts set role = ? where id = ?", role.label(), id);
  }

  @Override
  public void changeActive(int id, boolean active) {
    handle.execute("update accounts set active = ? where id = ?", active, id);
  }

  /** The whole table, since rows that aren't administrators yet can't be locked. */
  @Override
  public int lockAdministrators() {
    handle.execute("lock table accounts in share row exclusive mode");
    return handle
        .createQuery("select count(*) from accounts where role = 'administrator' and active")
        .mapTo(Integer.class)
        .one();
  }

  /**
   * What the secret of an account lets somebody do, and whose it is.
   *
   * @param table {@code t}, with a {@code secret_hash} and an {@code account_id}
   * @param columns of it
   * @param held makes both into one
   */
  static <T, H> Optional<H> held(
      Handle handle,
      String table,
      String columns,
      String secretHash,
      RowMapper<T> mapper,
      BiFunction<T, Account, H> held) {
    return handle
        .createQuery(
            "select %s, %s from %s t join accounts on accounts.id = t.account_id where t.secret_hash = :secretHash"
                .formatted(columns, COLUMNS, table))
        .bind("secretHash", secretHash)
        .map((row, context) -> held.apply(mapper.map(row, context), read(row, context)))
        .findOne();
  }

  /** From {@link #COLUMNS}. */
  private static Account read(ResultSet row, StatementContext context) throws SQLException {
    return new Account(
        row.getInt("account_id"),
        row.getString("account_name"),
        row.getString("display_name"),
        role(row.getString("account_role")),
        row.getBoolean("active"),
        Columns.instant(row, "since"));
  }

  static Role role(String label) {
    return Role.ofAccount(label).orElseThrow();
  }
}
