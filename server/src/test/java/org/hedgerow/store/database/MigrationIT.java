package org.hedgerow.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Consumer;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.editions.KeysSetAside;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The schema holds a sound bank and refuses states that make no sense. */
class MigrationIT {
  private static final List<String> WOOL =
      List.of(
          "insert into editions (number, summary) values (1, 'starter set')",
          "insert into accents (tag, name, place, vowels, consonants)"
              + " values ('en-GB', 'Southern British', 0, 'ʊ', 'w l')",
          "insert into correspondences (id, grapheme, value, class, reads_as_one, key_word) values"
              + " (1, 'w', null, 'basic', true, 'wet'),"
              + " (2, 'oo', 2, 'phonogram', true, 'wool'),"
              + " (3, 'l', null, 'basic', true, 'leg')",
          "insert into realisations values"
              + " (1, 1, 'en-GB', 'w', 0.1), (2, 2, 'en-GB', 'ʊ', 0.7), (3, 3, 'en-GB', 'l', 0.1)",
          "insert into words (id, spelling, status, commonness, since_edition)"
              + " values (1, 'wool', 'seeded', 4, 1)",
          "insert into word_tags (word_id, tag, value, reason)"
              + " values (1, 'syllables', '1', 'counted by hand')",
          "insert into pronunciations (id, word_id, accent, sounds, source, margin)"
              + " values (1, 1, 'en-GB', 'w ʊ l', 'by hand', 3.5)",
          "insert into spans values (1, 0, 1, '{0}'), (1, 1, 2, '{1,2}'), (1, 2, 3, '{3}')");

  private static TestDatabase database;

  @BeforeAll
  static void putWoolIntoTheBank() {
    database = TestDatabase.open();
    database.bank().jdbi().useHandle(handle -> WOOL.forEach(handle::execute));
  }

  @AfterAll
  static void drop() {
    database.close();
  }

  @Test
  void opensAnEmptyDatabaseAtTheNewestVersion() {
    assertThat(database.bank().migration().applied()).isPositive();
  }

  @Test
  void findsNothingToDoTheSecondTime() {
    try (BankDatabase again = BankDatabase.external(database.address())) {
      assertThat(again.migration().applied()).isZero();
      assertThat(again.migration().version()).isEqualTo(database.bank().migration().version());
    }
  }

  @Test
  void refusesASchemaNewerThanTheProgram() {
    try (TestDatabase newer = TestDatabase.open()) {
      newer
          .bank()
          .jdbi()
          .useHandle(
              handle ->
                  handle.execute(
                      "insert into flyway_schema_history select 999, '999', 'of tomorrow', 'SQL',"
                          + " 'V999__of_tomorrow.sql', 1, installed_by, now(), 1, true"
                          + " from flyway_schema_history where installed_rank = 1"));
      assertThatThrownBy(() -> BankDatabase.external(newer.address()))
          .isInstanceOf(DatabaseUnavailableException.class)
          .hasMessageContaining("The database's schema is version 999, newer than this program")
          .message()
          .hasLineCount(1);
    }
  }

  @Test
  void describesEveryTable() {
    assertThat(
            names(
                "select relname from pg_class join pg_namespace n on n.oid = relnamespace"
                    + " where nspname = 'public' and relkind = 'r' and relname not like 'flyway%'"
                    + " and obj_description(pg_class.oid) is null"))
        .isEmpty();
  }

  @Test
  void readsRecordsWithoutRegisteringThem() {
    record Spelt(String spelling, int commonness) {}

    List<Spelt> words =
        database
            .bank()
            .jdbi()
            .withHandle(
                handle ->
                    handle
                        .createQuery("select spelling, commonness from words")
                        .mapTo(Spelt.class)
                        .list());
    assertThat(words).contains(new Spelt("wool", 4));
  }

  @Test
  void addsKeysAgainThatWereSetAside() {
    String keys =
        "select conname || pg_get_constraintdef(oid) from pg_constraint"
            + " where conrelid = 'spans'::regclass order by 1";
    List<String> before = names(keys);
    inTransaction(
        handle ->
            KeysSetAside.during(
                handle,
                "spans",
                () -> handle.execute("insert into spans values (1, 3, 3, '{3}')")));
    assertThat(names(keys)).isEqualTo(before);
    inTransaction(handle -> handle.execute("delete from spans where position = 3"));
  }

  @Test
  void refusesRowsThatBreakKeysSetAside() {
    assertThatThrownBy(
            () ->
                inTransaction(
                    handle ->
                        KeysSetAside.during(
                            handle,
                            "spans",
                            () -> handle.execute("insert into spans values (99, 0, 3, '{3}')"))))
        .isInstanceOf(UnableToExecuteStatementException.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          words in capitals           | update words set spelling = 'Wool'
          empty words                 | update words set spelling = ''
          words with other signs      | update words set spelling = 'wool<b>'
          an unknown status           | update words set status = 'nice'
          a sixth degree              | update words set commonness = 6
          a word gone before it came  | update words set until_edition = 1
          the same word twice         | insert into words (spelling, status, commonness, since_edition) values ('wool', 'seeded', 1, 1)
          no sounds                   | update pronunciations set sounds = ''
          sounds with two blanks      | update pronunciations set sounds = 'w  ʊ l'
          a margin below nought       | update pronunciations set margin = -1
          a margin that is no number  | update pronunciations set margin = 'NaN'
          irregular with a margin     | update pronunciations set irregular_reason = 'no path'
          the same pronunciation twice| insert into pronunciations (word_id, accent, sounds, source) values (1, 'en-GB', 'w ʊ l', 'twice')
          an accent nobody knows      | update pronunciations set accent = 'xx'
          a tag without a value       | update word_tags set value = ''
          a span without letters      | update spans set letters = '{}'
          letters before the first    | update spans set letters = '{-1}' where position = 0
          letters in disorder         | update spans set letters = '{2,1}' where position = 1
          a letter twice              | update spans set letters = '{1,1}' where position = 1
          a letter that is nothing    | update spans set letters = '{1,null}' where position = 1
          letters in two rows         | update spans set letters = '{{1},{2}}' where position = 1
          two spans in one place      | update spans set position = 0
          a phonogram without a value | update correspondences set value = null where id = 2
          a value below one           | update correspondences set value = 0 where id = 2
          an unknown class            | update correspondences set class = 'odd'
          a grapheme with a blank     | update correspondences set grapheme = 'o o' where id = 2
          an endless cost             | update realisations set cost = 'Infinity'
          an accent of its own parent | update accents set parent = 'en-GB'
          an edition before the first | insert into editions (number, summary) values (0, 'none')
          """)
  void refuses(String what, String statement) {
    assertThatThrownBy(() -> inTransaction(handle -> handle.execute(statement)))
        .as(what)
        .isInstanceOf(UnableToExecuteStatementException.class)
        .hasMessageContaining("constraint");
  }

  private static void inTransaction(Consumer<Handle> work) {
    database.bank().jdbi().useTransaction(work::accept);
  }

  private static List<String> names(String query) {
    return database
        .bank()
        .jdbi()
        .withHandle(handle -> handle.createQuery(query).mapTo(String.class).list());
  }
}
