package org.hedgerow.store.review;

import static java.util.stream.Collectors.groupingBy;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.ContributionStore;
import org.hedgerow.review.Pending;
import org.hedgerow.review.Person;
import org.hedgerow.store.database.Columns;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.StatementContext;

/** Contributions in their table. */
record JdbiContributions(Handle handle) implements ContributionStore {
  private static final String SELECT =
      """
      select c.id, c.content, c.state, c.revision, c.author_id, a.display_name, c.made_at,
        c.changed_at, c.submitted_at, c.serves, c.remarks, c.edition
      from contributions c join accounts a on a.id = c.author_id
      """;

  @Override
  public Contribution add(Content content, Person author, Instant now) {
    int id =
        handle
            .createQuery(
                """
                insert into contributions (kind, subject, content, state, revision, author_id,
                  made_at, changed_at, serves, remarks)
                values (:kind, :subject, :content::jsonb, 'draft', 1, :author, :now, :now,
                  '{}', '[]')
                returning id
                """)
            .bind("kind", content.proposal().kind().label())
            .bind("subject", content.proposal().subject())
            .bind("content", ReviewJson.of(content))
            .bind("author", author.accountId())
            .bind("now", now)
            .mapTo(Integer.class)
            .one();
    return new Contribution(
        id,
        content,
        ContributionState.DRAFT,
        1,
        author,
        now,
        now,
        Optional.empty(),
        List.of(),
        List.of(),
        OptionalInt.empty());
  }

  @Override
  public Optional<Contribution> find(int id) {
    return one(SELECT + " where c.id = :id", id);
  }

  @Override
  public Optional<Contribution> lock(int id) {
    return one(SELECT + " where c.id = :id for update of c", id);
  }

  private Optional<Contribution> one(String query, int id) {
    return handle.createQuery(query).bind("id", id).map(JdbiContributions::read).findOne();
  }

  /** Never back in time: servers' clocks differ a little. */
  @Override
  public void save(Contribution contribution) {
    handle
        .createUpdate(
            """
            update contributions set kind = :kind, subject = :subject, content = :content::jsonb,
              state = :state, revision = :revision, changed_at = greatest(changed_at, :changed),
              submitted_at = :submitted, serves = :serves, remarks = :remarks::jsonb,
              edition = :edition
            where id = :id
            """)
        .bind("id", contribution.id())
        .bind("kind", contribution.kind().label())
        .bind("subject", contribution.proposal().subject())
        .bind("content", ReviewJson.of(contribution.content()))
        .bind("state", contribution.state().label())
        .bind("revision", contribution.revision())
        .bind("changed", contribution.changed())
        .bind("submitted", contribution.submitted())
        .bindArray("serves", String.class, contribution.serves())
        .bind("remarks", ReviewJson.of(contribution.remarks()))
        .bind("edition", contribution.edition())
        .execute();
  }

  @Override
  public void remove(int id) {
    handle.execute("delete from contributions where id = ? and state = 'draft'", id);
  }

  @Override
  public List<Contribution> find(ContributionQuery query) {
    return wanted(SELECT, query).map(JdbiContributions::read).list();
  }

  @Override
  public List<Pending> pending(ContributionQuery query) {
    return wanted("select c.id, c.author_id, c.changed_at, c.serves from contributions c", query)
        .map(
            (row, context) ->
                new Pending(
                    row.getInt("id"),
                    row.getInt("author_id"),
                    Columns.instant(row, "changed_at"),
                    Columns.texts(row, "serves")))
        .list();
  }

  @Override
  public List<Contribution> find(List<Integer> ids) {
    return handle
        .createQuery(SELECT + " where c.id = any(:ids) order by array_position(:ids, c.id)")
        .bindArray("ids", Integer.class, ids)
        .map(JdbiContributions::read)
        .list();
  }

  private Query wanted(String select, ContributionQuery query) {
    List<String> conditions = new ArrayList<>();
    conditions.add("(c.state <> 'draft' or c.author_id = :viewer)");
    if (!query.states().isEmpty()) {
      conditions.add("c.state = any(:states)");
    }
    query.kind().ifPresent(kind -> conditions.add("c.kind = :kind"));
    query.authorId().ifPresent(id -> conditions.add("c.author_id = :author"));
    query.serves().ifPresent(value -> conditions.add("c.serves @> array[:serves]::text[]"));
    query.about().ifPresent(subject -> conditions.add("c.subject = :about"));
    query.before().ifPresent(id -> conditions.add("c.id < :before"));
    Query sql =
        handle
            .createQuery(
                select
                    + " where "
                    + String.join(" and ", conditions)
                    + " order by c.id desc limit :limit")
            .bind("viewer", query.viewerId())
            .bind("limit", query.limit());
    if (!query.states().isEmpty()) {
      sql.bindArray("states", String.class, labels(query.states()));
    }
    query.kind().ifPresent(kind -> sql.bind("kind", kind.label()));
    query.authorId().ifPresent(id -> sql.bind("author", id));
    query.serves().ifPresent(value -> sql.bind("serves", value));
    query.about().ifPresent(subject -> sql.bind("about", subject));
    query.before().ifPresent(id -> sql.bind("before", id));
    return sql;
  }

  private static List<String> labels(Set<ContributionState> states) {
    return states.stream().map(ContributionState::label).toList();
  }

  @Override
  public Map<String, List<Contribution>> waitingAbout(Set<String> subjects) {
    return handle
        .createQuery(
            SELECT + " where c.subject = any(:subjects) and c.state = 'submitted' order by c.id")
        .bindArray("subjects", String.class, subjects)
        .map(JdbiContributions::read)
        .collect(groupingBy(each -> each.proposal().subject()));
  }

  @Override
  public Map<String, List<Contribution>> undecided(int authorId, Set<String> subjects) {
    return handle
        .createQuery(
            SELECT
                + " where c.subject = any(:subjects) and c.author_id = :author"
                + " and c.state in ('draft', 'submitted') order by c.id")
        .bindArray("subjects", String.class, subjects)
        .bind("author", authorId)
        .map(JdbiContributions::read)
        .collect(groupingBy(each -> each.proposal().subject()));
  }

  /** Rows that refer to the account can be added by others meanwhile. */
  @Override
  public void lockAuthor(int authorId) {
    handle.execute("select id from accounts where id = ? for no key update", authorId);
  }

  private static Contribution read(ResultSet row, StatementContext context) throws SQLException {
    return new Contribution(
        row.getInt("id"),
        ReviewJson.content(row.getString("content")),
        ContributionState.labelled(row.getString("state")).orElseThrow(),
        row.getInt("revision"),
        new Person(row.getInt("author_id"), row.getString("display_name")),
        Columns.instant(row, "made_at"),
        Columns.instant(row, "changed_at"),
        Columns.optionalInstant(row, "submitted_at"),
        Columns.texts(row, "serves"),
        ReviewJson.remarks(row.getString("remarks")),
        Columns.optionalNumber(row, "edition"));
  }
}
