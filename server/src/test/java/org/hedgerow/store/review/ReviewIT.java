package org.hedgerow.store.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hedgerow.operations.Role;
import org.hedgerow.review.ApprovingContract;
import org.hedgerow.review.ContributingContract;
import org.hedgerow.review.CurriculumContract;
import org.hedgerow.review.DecisionsContract;
import org.hedgerow.review.LifeContract;
import org.hedgerow.review.ManyContract;
import org.hedgerow.review.RaceContract;
import org.hedgerow.review.RepeatingContract;
import org.hedgerow.review.ReviewRecords;
import org.hedgerow.review.VotingContract;
import org.jdbi.v3.core.JdbiException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Review kept in a real database, and what the database itself refuses. */
class ReviewIT {
  private static DatabaseReviewRecords records;

  @BeforeAll
  static void create() {
    records = new DatabaseReviewRecords();
  }

  @AfterAll
  static void drop() {
    records.close();
  }

  @Nested
  class RulesAndSequences extends CurriculumContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Contributing extends ContributingContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Deciding extends DecisionsContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Approving extends ApprovingContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Life extends LifeContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Repeating extends RepeatingContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Voting extends VotingContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Race extends RaceContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Many extends ManyContract {
    @Override
    protected ReviewRecords records() {
      return records.emptied();
    }
  }

  @Nested
  class Tables {
    private static final String MADE =
        "insert into contributions (id, kind, subject, content, state, revision, author_id,"
            + " made_at, changed_at, submitted_at, serves, remarks, edition) select 7, 'word', 'x',"
            + " '{}', 'submitted', 1, id, now(), now(), now(), '{}', '[]', null from accounts";

    private void fill() {
      records.emptied();
      records.account("nora", "Nora", Role.CONTRIBUTOR);
      records.execute(MADE);
      records.execute(
          "insert into decisions (contribution_id, revision, kind, account_id, at, comment)"
              + " select 7, 1, 'approve', id, now(), '' from accounts");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "update decisions set comment = 'never said'",
          "delete from decisions",
          "truncate decisions",
          "truncate contributions cascade"
        })
    void whatWasDecidedStays(String statement) {
      fill();
      assertThatThrownBy(() -> records.execute(statement))
          .isInstanceOf(JdbiException.class)
          .hasMessageContaining("only ever added");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            an unknown kind              | update contributions set kind = 'poem'
            an unknown state             | update contributions set state = 'lost'
            a revision before the first  | update contributions set revision = 0
            content that is no object    | update contributions set content = '[]'
            remarks that are no list     | update contributions set remarks = '{}'
            approved in no edition       | update contributions set state = 'approved'
            an edition that isn't there  | update contributions set edition = 99
            sent, but never              | update contributions set submitted_at = null
            changed before it was made   | update contributions set changed_at = made_at - interval '1 second'
            gone, but decided on         | delete from contributions
            a decision on nothing        | insert into decisions (contribution_id, revision, kind, account_id, at, comment) select 99, 1, 'approve', id, now(), '' from accounts
            a refusal without a reason   | insert into decisions (contribution_id, revision, kind, account_id, at, comment) select 7, 1, 'decline', id, now(), '' from accounts
            overruled nothing            | insert into decisions (contribution_id, revision, kind, account_id, at, comment) select 7, 1, 'overrule', id, now(), 'x' from accounts
            published by a refusal       | insert into decisions (contribution_id, revision, kind, account_id, at, comment, edition) select 7, 1, 'decline', id, now(), 'x', 1 from accounts
            an upload that is a program  | insert into uploads select 'x', 'text/javascript', '', 1, 1, id, now() from accounts
            an upload without a width    | insert into uploads select 'x', 'image/png', '', 0, 1, id, now() from accounts
            """)
    void refuses(String what, String statement) {
      fill();
      assertThatThrownBy(() -> records.execute(statement))
          .as(what)
          .isInstanceOf(JdbiException.class)
          .hasMessageContaining("constraint");
    }

    @Test
    void everyColumnSaysWhatItHolds() {
      assertThat(
              records.strings(
                  "select table_name || '.' || column_name from information_schema.columns"
                      + " where table_name in ('contributions', 'decisions', 'uploads', 'pictures',"
                      + " 'sentences') and column_name not in ('id', 'contribution_id')"
                      + " and col_description(table_name::regclass, ordinal_position) is null"))
          .isEmpty();
    }
  }
}
