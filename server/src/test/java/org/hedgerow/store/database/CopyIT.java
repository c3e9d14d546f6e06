package org.hedgerow.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hedgerow.store.TestDatabase;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written by COPY is read by it unchanged. */
class CopyIT {
  private static TestDatabase database;
  private static Handle handle;

  @BeforeAll
  static void open() {
    database = TestDatabase.open();
    handle = database.bank().jdbi().open();
    handle.execute("create temporary table copied (number bigint, text text, letters smallint[])");
  }

  @AfterAll
  static void close() {
    handle.close();
    database.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "wool",
        "ʃ ɹ ʊ",
        "a\tb",
        "a\nb\r\nc",
        "back\\slash",
        "\\N",
        "\\.",
        "\\",
        "\b\f\u000b\u0001",
        " ",
        "🦔",
        "{1,2}",
        "'; drop table words; --"
      })
  void keepsEverySign(String text) {
    handle.execute("truncate copied");
    try (CopyWriter rows = CopyWriter.into(handle, "copied (text)")) {
      rows.text(text).endRow();
      rows.optional(text).endRow();
    }
    try (CopyReader rows = CopyReader.of(handle, "select text from copied")) {
      assertThat(rows.next()).isTrue();
      assertThat(rows.text()).isEqualTo(text);
      assertThat(rows.next()).isTrue();
      assertThat(rows.nullable()).isEqualTo(text);
      assertThat(rows.next()).isFalse();
    }
  }

  /** So that it is told from an error of ours, and whoever asked is told to try again. */
  @Test
  void aConnectionThatBreaksIsTheDatabases() {
    assertThatThrownBy(() -> database.bank().jdbi().useTransaction(CopyIT::writeAndBreak))
        .isInstanceOfSatisfying(
            JdbiException.class,
            failure -> assertThat(SqlStates.isConnectionProblem(failure)).isTrue());
  }

  private static void writeAndBreak(Handle broken) {
    broken.execute("create temporary table lost (text text)");
    int pid = broken.createQuery("select pg_backend_pid()").mapTo(Integer.class).one();
    try (CopyWriter rows = CopyWriter.into(broken, "lost (text)")) {
      rows.text("ship").endRow();
      handle.execute("select pg_terminate_backend(?, 5000)", pid);
    }
  }

  @Test
  void writesNullForAnEmptyText() {
    handle.execute("truncate copied");
    try (CopyWriter rows = CopyWriter.into(handle, "copied (number, text)")) {
      rows.nothing().optional("").endRow();
    }
    try (CopyReader rows = CopyReader.of(handle, "select number, text, text from copied")) {
      assertThat(rows.next()).isTrue();
      assertThat(rows.nullable()).isNull();
      assertThat(rows.nullable()).isNull();
      assertThat(rows.text()).isEmpty();
    }
  }

  @Test
  void readsNumbersAndArrays() {
    String query = "select 0, 2147483647, array[0,1,63]::smallint[], true, 'end'";
    try (CopyReader rows = CopyReader.of(handle, query)) {
      assertThat(rows.next()).isTrue();
      assertThat(rows.number()).isZero();
      assertThat(rows.number()).isEqualTo(Integer.MAX_VALUE);
      assertThat(rows.bits()).isEqualTo(1L | 2L | 1L << 63);
      assertThat(rows.flag()).isTrue();
      assertThat(rows.text()).isEqualTo("end");
    }
  }

  @Test
  void leavesTheConnectionUsableWhenItIsClosedEarly() {
    try (CopyReader rows = CopyReader.of(handle, "select generate_series(1, 100000)")) {
      assertThat(rows.next()).isTrue();
    }
    assertThat(handle.createQuery("select 1").mapTo(Integer.class).one()).isEqualTo(1);
  }
}
