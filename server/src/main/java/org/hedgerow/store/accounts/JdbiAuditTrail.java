package org.hedgerow.store.accounts;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.AuditQuery;
import org.hedgerow.accounts.AuditRecord;
import org.hedgerow.accounts.AuditTrail;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Reads the record of what was done, within somebody's transaction. */
record JdbiAuditTrail(Handle handle) implements AuditTrail {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final TypeReference<LinkedHashMap<String, Object>> FIELDS =
      new TypeReference<>() {};

  /** One statement for each choice of conditions, so that PostgreSQL can plan each by itself. */
  @Override
  public List<AuditRecord> find(AuditQuery query) {
    Map<String, Object> values = new LinkedHashMap<>();
    List<String> conditions = new ArrayList<>(List.of("true"));
    add(conditions, values, "actor = :actor", "actor", query.actor());
    add(conditions, values, "starts_with(action, :action)", "action", query.action());
    add(conditions, values, "subject = :subject", "subject", query.subject());
    add(conditions, values, "at >= :from", "from", query.from());
    add(conditions, values, "at < :to", "to", query.to());
    add(conditions, values, "id < :below", "below", query.below());
    return handle
        .createQuery(
            "select id, at, account_id, actor, action, subject, before, after from audit where "
                + String.join(" and ", conditions)
                + " order by id desc limit :limit")
        .bindMap(values)
        .bind("limit", query.limit())
        .map(JdbiAuditTrail::read)
        .list();
  }

  private static void add(
      List<String> conditions,
      Map<String, Object> values,
      String condition,
      String name,
      Optional<?> value) {
    value.ifPresent(
        given -> {
          conditions.add(condition);
          values.put(name, given);
        });
  }

  private static AuditRecord read(ResultSet row, StatementContext context) throws SQLException {
    int account = row.getInt("account_id");
    Optional<Integer> accountId = row.wasNull() ? Optional.empty() : Optional.of(account);
    return new AuditRecord(
        row.getLong("id"),
        Instant.from(row.getObject("at", java.time.OffsetDateTime.class)),
        accountId,
        row.getString("actor"),
        row.getString("action"),
        row.getString("subject"),
        fields(row.getString("before")),
        fields(row.getString("after")));
  }

  private static Map<String, Object> fields(String json) {
    try {
      return JSON.readValue(json, FIELDS);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** From one action to the next by the index, however many records there are of each. */
  @Override
  public List<String> actions() {
    return handle
        .createQuery(
            "with recursive found as ("
                + " (select action from audit order by action limit 1)"
                + " union all"
                + " select (select action from audit where action > found.action"
                + " order by action limit 1) from found where found.action is not null)"
                + " select action from found where action is not null order by action")
        .mapTo(String.class)
        .list();
  }
}
