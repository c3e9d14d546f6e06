package org.hedgerow.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.util.Map;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.AuditEntry;
import org.hedgerow.operations.AuditLog;
import org.jdbi.v3.core.Handle;

/** Adds to the record of what was done, within somebody's transaction. */
public record JdbiAudit(Handle handle) implements AuditLog {
  private static final ObjectMapper JSON = new ObjectMapper().registerModule(new Jdk8Module());

  @Override
  public void add(AuditEntry entry) {
    handle
        .createUpdate(
            "insert into audit (at, account_id, actor, action, subject, before, after) values"
                + " (:at, :account, :actor, :action, :subject, :before::jsonb, :after::jsonb)")
        .bind("at", entry.at())
        .bind("account", entry.actor().account().map(Account::id))
        .bind("actor", entry.actor().name())
        .bind("action", entry.action())
        .bind("subject", entry.subject())
        .bind("before", json(entry.before()))
        .bind("after", json(entry.after()))
        .execute();
  }

  private static String json(Map<String, Object> values) {
    try {
      return JSON.writeValueAsString(values);
    } catch (JsonProcessingException problem) {
      throw new IllegalArgumentException("The audit record takes JSON values only", problem);
    }
  }
}
