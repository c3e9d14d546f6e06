package org.hedgerow.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Word;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.editions.EditionReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * An archive of every schema that was released is still read; how they were made is beside them.
 */
class OlderArchivesIT {

  private static Path folder() throws URISyntaxException {
    URL made = Objects.requireNonNull(OlderArchivesIT.class.getResource("archives/README.md"));
    return Objects.requireNonNull(Path.of(made.toURI()).getParent());
  }

  static List<Path> archives() throws Exception {
    try (Stream<Path> files = Files.list(folder())) {
      return files.filter(file -> file.toString().endsWith(".zip")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("archives")
  void isReadAndBroughtUpToDate(Path archive) {
    try (TestDatabase database = TestDatabase.open()) {
      new ArchiveReader(database.bank()).read(archive, table -> {});
      assertThat(new EditionReader(database.bank()).first().words().stream().map(Word::spelling))
          .containsExactly("boat", "stripe", "bath", "sure");
      assertThat(database.one("select name || approvals from centre", String.class))
          .isEqualTo("Thornfield2");
      assertThat(
              database.one("select string_agg(name, ' ' order by id) from accounts", String.class))
          .isEqualTo("rowan sorrel");
      assertThat(database.one("select comment from decisions", String.class)).isEqualTo("Fine.");
      assertThat(
              database.one(
                  "select count(*) from pg_namespace where nspname = 'hedgerow_import'",
                  Integer.class))
          .isZero();
    }
  }

  /** Whoever adds a migration adds an archive of the schema before it. */
  @Test
  void thereIsOneOfEverySchemaThatCouldExport() throws Exception {
    assertThat(archives())
        .extracting(file -> file.getFileName().toString())
        .contains("schema-5.zip", "schema-6.zip");
  }
}
