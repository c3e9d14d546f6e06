package org.hedgerow.store.review;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Decision;
import org.hedgerow.review.DecisionKind;
import org.hedgerow.review.DecisionStore;
import org.hedgerow.review.NewDecision;
import org.hedgerow.review.Person;
import org.hedgerow.store.database.Columns;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Decisions in their table. */
record JdbiDecisions(Handle handle) implements DecisionStore {
  @Override
  public Decision add(Contribution on, NewDecision decision, Person by, Instant at) {
    int id =
        handle
            .createQuery(
                """
                insert into decisions (contribution_id, revision, kind, account_id, at, comment,
                  overruled, edition)
                values (:contribution, :revision, :kind, :account, :at, :comment, :overruled,
                  :edition)
                returning id
                """)
            .bind("contribution", on.id())
            .bind("revision", on.revision())
            .bind("kind", decision.kind().label())
            .bind("account", by.accountId())
            .bind("at", at)
            .bind("comment", decision.comment())
            .bind("overruled", decision.overruled())
            .bind("edition", decision.edition())
            .mapTo(Integer.class)
            .one();
    return new Decision(
        id,
        on.id(),
        on.revision(),
        decision.kind(),
        by,
        at,
        decision.comment(),
        decision.overruled(),
        decision.edition());
  }

  @Override
  public List<Decision> on(int contributionId) {
    return handle
        .createQuery(
            """
            select d.id, d.contribution_id, d.revision, d.kind, d.account_id, a.display_name, d.at,
              d.comment, d.overruled, d.edition
            from decisions d join accounts a on a.id = d.account_id
            where d.contribution_id = :contribution order by d.id
            """)
        .bind("contribution", contributionId)
        .map(JdbiDecisions::read)
        .list();
  }

  private static Decision read(ResultSet row, StatementContext context) throws SQLException {
    return new Decision(
        row.getInt("id"),
        row.getInt("contribution_id"),
        row.getInt("revision"),
        DecisionKind.labelled(row.getString("kind")).orElseThrow(),
        new Person(row.getInt("account_id"), row.getString("display_name")),
        Columns.instant(row, "at"),
        row.getString("comment"),
        Optional.ofNullable(row.getString("overruled")),
        Columns.optionalNumber(row, "edition"));
  }
}
